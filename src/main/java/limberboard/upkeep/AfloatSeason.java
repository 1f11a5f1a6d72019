package limberboard.upkeep;

import java.time.LocalDate;
import java.util.Locale;

/**
 * One season afloat.
 *
 * @param year the year in which it begins
 * @param from first day afloat
 * @param to last day afloat, not before {@code from}
 */
public record AfloatSeason(int year, LocalDate from, LocalDate to) {
  private static final int CENTURY = 100;

  /** What it is called: {@code 2026}, or {@code 2026/27} where it runs over the year's end. */
  public String label() {
    return to.getYear() == year
        ? Integer.toString(year)
        : String.format(Locale.ROOT, "%d/%02d", year, to.getYear() % CENTURY);
  }

  /** Whether the boat is afloat on this day of this season. */
  public boolean contains(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }
}
