package limberboard.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import java.util.UUID;
import limberboard.boat.Boat;
import limberboard.library.file.Controls;

/** What all calendars made here have in common. Stateless. */
final class CalendarText {
  private static final String PRODUCT = "-//Limberboard//Upkeep//EN";
  private static final LocalDate SEQUENCE_FROM = LocalDate.of(2000, 1, 1);

  /** More lines than a log has; leaves room for dates until the year 2500. */
  private static final int LINES_A_DAY = 10_000;

  private CalendarText() {}

  /** An empty calendar. */
  static ICalendar named(String name) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName(Controls.visible(name));
    return calendar;
  }

  /** The file's text; lines end as RFC 5545 asks. */
  static String of(ICalendar calendar) {
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException("a string cannot be written", e);
    }
    return Folding.fold(text.toString());
  }

  /**
   * An event of a whole day that blocks nothing.
   *
   * @param boat the boat it is about
   * @param what tells it from the boat's other events
   * @param on the day on which it is written
   * @param day its day
   */
  static VEvent wholeDay(Boat boat, String what, LocalDate on, LocalDate day) {
    VEvent event = new VEvent();
    event.setUid(uid(boat, what));
    event.setSequence(sequence(boat, on));
    event.setDateTimeStamp(Date.from(on.atStartOfDay(ZoneOffset.UTC).toInstant()));
    event.setDateStart(new DateStart(wholeDay(day)));
    event.setDateEnd(new DateEnd(wholeDay(day.plusDays(1))));
    event.setTransparency(true);
    return event;
  }

  /** Grows with the day and with every line of the log, so that a later export counts as newer. */
  private static int sequence(Boat boat, LocalDate on) {
    int days = (int) ChronoUnit.DAYS.between(SEQUENCE_FROM, on);
    return days * LINES_A_DAY + Math.min(boat.log().size(), LINES_A_DAY - 1);
  }

  /** Made of the boat and the work alone: the same in every export, different everywhere else. */
  private static String uid(Boat boat, String what) {
    String name = boat.model().id() + "/" + boat.hull() + "/" + boat.id() + "/" + what;
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
  }

  /** A date without a time, and so without a zone. */
  private static ICalDate wholeDay(LocalDate day) {
    return new ICalDate(
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
  }
}
