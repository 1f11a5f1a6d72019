package limberboard.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.UUID;
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
  private static final String PRODUCT = "-//Limberboard//Upkeep//EN";
  private static final LocalDate SEQUENCE_FROM = LocalDate.of(2000, 1, 1);
  private static final int SEASONS = 3;

  /** More lines than a log has; leaves room for dates until the year 2500. */
  private static final int LINES_A_DAY = 10_000;

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
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName(Controls.visible(upkeep.fitting().boat().name() + ": upkeep"));
    int last = upkeep.thisSeason().year() + SEASONS - 1;
    upkeep.all().stream()
        .filter(due -> due.season() <= last)
        .map(due -> event(due, upkeep))
        .forEach(calendar::addEvent);
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException("a string cannot be written", e);
    }
    return Folding.fold(text.toString());
  }

  private VEvent event(Due due, Upkeep upkeep) {
    Boat boat = upkeep.fitting().boat();
    LocalDate on = upkeep.fitting().on();
    VEvent event = new VEvent();
    event.setUid(uid(boat, due));
    event.setSequence(sequence(boat, on));
    event.setDateTimeStamp(Date.from(on.atStartOfDay(ZoneOffset.UTC).toInstant()));
    event.setDateStart(new DateStart(wholeDay(due.plan())));
    event.setDateEnd(new DateEnd(wholeDay(due.plan().plusDays(1))));
    event.setTransparency(true);
    event.setSummary(Controls.visible(boat.name() + ": " + due.title()));
    event.setDescription(Controls.visible(description(due, upkeep)));
    event.addCategories(due.work().details().work().spoken());
    Duration before = Duration.builder().prior(true).days(remindDays).build();
    event.addAlarm(
        VAlarm.display(new Trigger(before, Related.START), event.getSummary().getValue()));
    return event;
  }

  /** Grows with the day and with every line of the log, so that a later export counts as newer. */
  private static int sequence(Boat boat, LocalDate on) {
    int days = (int) ChronoUnit.DAYS.between(SEQUENCE_FROM, on);
    return days * LINES_A_DAY + Math.min(boat.log().size(), LINES_A_DAY - 1);
  }

  /** Made of the boat and the work alone: the same in every export, different everywhere else. */
  private static String uid(Boat boat, Due due) {
    String name = boat.model().id() + "/" + boat.hull() + "/" + boat.id() + "/" + due.id();
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
  }

  /** A date without a time, and so without a zone. */
  private static ICalDate wholeDay(LocalDate day) {
    return new ICalDate(
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
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
        due.runsOut().map(day -> "Runs out on " + day + ": ").orElse("No day can be told: ")
            + due.why().said()
            + ".");
    due.phase().ifPresent(phase -> lines.add("Done " + PhaseWords.of(phase) + "."));
    lines.add(
        "About " + Minutes.words(details.minutes()) + ", an estimate. Page: " + due.work().id());
    return String.join("\n", lines);
  }
}
