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
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments.Call;
import limberboard.upkeep.Booking;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.WhenDue;
import limberboard.words.DayText;
import limberboard.words.Minutes;
import limberboard.words.OutsiderWords;
import limberboard.words.PhaseWords;
import limberboard.words.Sentences;

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
   * The file's text: what is due until the end of the third season, each with its next day, and the
   * days by which others are to be booked. Lines end as RFC 5545 asks.
   */
  public String text(Upkeep upkeep) {
    ICalendar calendar = CalendarText.named(upkeep.fitting().boat().name() + ": upkeep");
    int last = upkeep.thisSeason().year() + SEASONS - 1;
    upkeep.all().stream()
        .filter(due -> due.season() <= last)
        .map(due -> event(due, upkeep))
        .forEach(calendar::addEvent);
    upkeep.appointments().calls().forEach(call -> book(call, upkeep, calendar));
    return CalendarText.of(calendar);
  }

  /** The file's text: only the days by which others are to be booked, as they stand in it all. */
  public String bookings(Upkeep upkeep) {
    ICalendar calendar = CalendarText.named(upkeep.fitting().boat().name() + ": to book");
    upkeep.appointments().calls().forEach(call -> book(call, upkeep, calendar));
    return CalendarText.of(calendar);
  }

  /** The days to book by, each on its own; what has none is left out. */
  private void book(Call call, Upkeep upkeep, ICalendar calendar) {
    for (Appointed each : call.all()) {
      each.booking()
          .map(booking -> event(booking, call, each, upkeep))
          .ifPresent(calendar::addEvent);
    }
  }

  private VEvent event(Booking booking, Call call, Appointed each, Upkeep upkeep) {
    Boat boat = upkeep.fitting().boat();
    LocalDate on = upkeep.fitting().on();
    VEvent event = CalendarText.wholeDay(boat, "book/" + each.due().id(), on, booking.day());
    event.setSummary(
        Controls.visible(
            boat.name()
                + ": book "
                + OutsiderWords.of(each.whom())
                + " for "
                + Sentences.quoted(each.due().title())));
    event.setDescription(Controls.visible(description(call, each, upkeep)));
    event.addCategories("to book");
    remind(event);
    return event;
  }

  private static String description(Call call, Appointed each, Upkeep upkeep) {
    List<String> lines = new ArrayList<>(cautions(each.due(), upkeep));
    WhenDue when = new WhenDue(each.due(), each.on());
    lines.add(call.said(DayText::written) + ".");
    lines.add(Sentences.capital(each.whenToBook(DayText::written)) + ".");
    lines.add(when.state(DayText::written) + ". " + when.plan(DayText::written) + ".");
    lines.add("Left undone it " + each.due().matters() + ".");
    each.ownPart().ifPresent(lines::add);
    lines.add("Your own time: " + each.ownTime() + ". Page: " + each.due().work().id());
    return String.join("\n", lines);
  }

  private void remind(VEvent event) {
    Duration before = Duration.builder().prior(true).days(remindDays).build();
    event.addAlarm(
        VAlarm.display(new Trigger(before, Related.START), event.getSummary().getValue()));
  }

  private static List<String> cautions(Due due, Upkeep upkeep) {
    List<String> cautions = upkeep.cautions(due.work()).stream().map(WorkCaution::title).toList();
    return cautions.isEmpty()
        ? List.of()
        : List.of("Cautions first: " + String.join("; ", cautions) + ".");
  }

  private VEvent event(Due due, Upkeep upkeep) {
    Boat boat = upkeep.fitting().boat();
    LocalDate on = upkeep.fitting().on();
    VEvent event = CalendarText.wholeDay(boat, due.id(), on, due.plan());
    event.setSummary(Controls.visible(boat.name() + ": " + due.title()));
    event.setDescription(Controls.visible(description(due, upkeep)));
    event.addCategories(due.work().details().work().spoken());
    remind(event);
    return event;
  }

  private String description(Due due, Upkeep upkeep) {
    Procedure details = due.work().details();
    List<String> lines = new ArrayList<>(cautions(due, upkeep));
    if (details.skill() == Skill.LICENSED) {
      lines.add("For the licensed only: have it done, and keep the paper.");
    } else if (details.skill() == Skill.YARD) {
      lines.add("Work for the yard.");
    }
    lines.add(
        due.lastDay()
                .map(day -> "Runs out on " + DayText.written(day) + ": ")
                .orElse(due.isKnown() ? "No day can be told: " : "Not known, look first: ")
            + due.why().said(DayText::written)
            + ".");
    due.phase().ifPresent(phase -> lines.add("Done " + PhaseWords.of(phase) + "."));
    lines.add(
        "About " + Minutes.words(details.minutes()) + ", an estimate. Page: " + due.work().id());
    return String.join("\n", lines);
  }
}
