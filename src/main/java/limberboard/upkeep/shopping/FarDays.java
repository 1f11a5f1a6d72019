package limberboard.upkeep.shopping;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Period;

/** Days reckoned with periods that people wrote, however long. */
final class FarDays {
  private FarDays() {}

  /** A period after a day; the last day there is where it runs past that. */
  static LocalDate after(LocalDate day, Period period) {
    try {
      return day.plus(period);
    } catch (DateTimeException | ArithmeticException e) {
      return LocalDate.MAX;
    }
  }

  /** A period before a day; the first day there is where it runs past that. */
  static LocalDate before(LocalDate day, Period period) {
    try {
      return day.minus(period);
    } catch (DateTimeException | ArithmeticException e) {
      return LocalDate.MIN;
    }
  }
}
