package limberboard.upkeep;

import java.time.LocalDate;
import java.util.function.Function;
import limberboard.library.page.Procedure.Appointment;

/**
 * By when somebody else is to be booked, seen from a day. All that says when to book asks here.
 *
 * @param by the last day on which it is early enough
 * @param on the day it is seen from
 */
public record Booking(LocalDate by, LocalDate on) {

  /**
   * The booking of work.
   *
   * @param with whom, and how long before
   * @param day the day on which the work is to be done
   * @param on the day it is seen from
   */
  public static Booking of(Appointment with, LocalDate day, LocalDate on) {
    return new Booking(day.minus(with.ahead()), on);
  }

  /** Whether its last day is today or gone. */
  public boolean isNow() {
    return !by.isAfter(on);
  }

  /** The day on which to book it at the latest that can still be had. */
  public LocalDate day() {
    return isNow() ? on : by;
  }

  /**
   * In words: {@code book by 2 Mar 2027}.
   *
   * @param day how a day is written
   */
  public String said(Function<LocalDate, String> day) {
    if (by.isEqual(on)) {
      return "book today";
    }
    return isNow()
        ? "book now: should have been booked by " + day.apply(by)
        : "book by " + day.apply(by);
  }
}
