package limberboard.calendar;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.file.Controls;
import limberboard.upkeep.plan.PlanDay;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.words.CountWords;
import limberboard.words.Minutes;

/** Writes the days of a plan as an iCalendar file (RFC 5545): one event a day. Immutable. */
public final class PlanCalendar {
  private final Library library;

  /** Calendars whose cautions are looked up in this library. */
  public PlanCalendar(Library library) {
    this.library = library;
  }

  /** The file's text: each day that has work. Lines end as RFC 5545 asks. */
  public String text(WorkPlan plan) {
    ICalendar calendar = CalendarText.named(plan.fitting().boat().name() + ": plan");
    plan.days().stream()
        .filter(day -> !day.lines().isEmpty())
        .map(day -> event(day, plan))
        .forEach(calendar::addEvent);
    return CalendarText.of(calendar);
  }

  private VEvent event(PlanDay day, WorkPlan plan) {
    Boat boat = plan.fitting().boat();
    VEvent event =
        CalendarText.wholeDay(
            boat, "plan/" + day.free().day(), plan.fitting().on(), day.free().day());
    event.setSummary(
        Controls.visible(
            boat.name()
                + ": "
                + CountWords.of(day.lines().size(), "piece of work", "pieces of work")
                + ", "
                + Minutes.words(day.minutes())));
    event.setDescription(Controls.visible(description(day, plan)));
    return event;
  }

  private String description(PlanDay day, WorkPlan plan) {
    WorkCautions cautions = WorkCautions.on(library, plan.fitting());
    List<String> lines = new ArrayList<>();
    for (PlanLine line : day.lines()) {
      List<String> titles =
          line.work().cautions(cautions).stream().map(WorkCaution::title).toList();
      lines.add(
          line.line().number()
              + ". "
              + line.work().title()
              + ", "
              + Minutes.words(line.minutes())
              + ", page "
              + line.line().work().id()
              + (titles.isEmpty() ? "" : ". Cautions: " + String.join("; ", titles)));
    }
    return String.join("\n", lines);
  }
}
