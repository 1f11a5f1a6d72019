package limberboard.calendar;

import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.parameter.Related;
import biweekly.property.Trigger;
import biweekly.util.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.library.file.Controls;
import limberboard.library.page.Procedure;
import limberboard.library.value.Skill;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.words.Minutes;
import limberboard.words.PhaseWords;

/** Writes what is due on a boat as an iCalendar file (RFC 5545). Immutable. */
public final class UpkeepCalendar {
  private static final int SEASONS = 3;

  private final int remindDays;

  /**
   * A calendar.
   *
   * @param remindDays how many days before the work it reminds, 0 to 365
   */
  public UpkeepCalendar(int remindDays) {
    this.remindDays = remindDays;
  }

  /**
   * The file's text: what is due until the end of the third season, each with its next day. Lines
   * end as RFC 5545 asks.
   */
  public String text(Upkeep upkeep) {
    ICalendar calendar = CalendarText.named(upkeep.fitting().boat().name() + ": upkeep");
    int last = upkeep.thisSeason().year() + SEASONS - 1;
    upkeep.all().stream()
        .filter(due -> due.season() <= last)
        .map(due -> event(due, upkeep))
        .forEach(calendar::addEvent);
    return CalendarText.of(calendar);
  }

  private VEvent event(Due due, Upkeep upkeep) {
    Boat boat = upkeep.fitting().boat();
    LocalDate on = upkeep.fitting().on();
    VEvent event = CalendarText.wholeDay(boat, due.id(), on, due.plan());
    event.setSummary(Controls.visible(boat.name() + ": " + due.title()));
    event.setDescription(Controls.visible(description(due, upkeep)));
    event.addCategories(due.work().details().work().spoken());
    Duration before = Duration.builder().prior(true).days(remindDays).build();
    event.addAlarm(
        VAlarm.display(new Trigger(before, Related.START), event.getSummary().getValue()));
    return event;
  }

  private String description(Due due, Upkeep upkeep) {
    Procedure details = due.work().details();
    List<String> lines = new ArrayList<>();
    List<String> cautions = upkeep.cautions(due.work()).stream().map(WorkCaution::title).toList();
    if (!cautions.isEmpty()) {
      lines.add("Cautions first: " + String.join("; ", cautions) + ".");
    }
    if (details.skill() == Skill.LICENSED) {
      lines.add("For the licensed only: have it done, and keep the paper.");
    } else if (details.skill() == Skill.YARD) {
      lines.add("Work for the yard.");
    }
    lines.add(
        due.lastDay()
                .map(day -> "Runs out on " + day + ": ")
                .orElse(due.isKnown() ? "No day can be told: " : "Not known, look first: ")
            + due.why().said()
            + ".");
    due.phase().ifPresent(phase -> lines.add("Done " + PhaseWords.of(phase) + "."));
    lines.add(
        "About " + Minutes.words(details.minutes()) + ", an estimate. Page: " + due.work().id());
    return String.join("\n", lines);
  }
}
