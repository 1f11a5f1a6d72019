package limberboard.boat;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * When a boat is afloat in the year. South of the equator a season runs over the year's end.
 *
 * @param from first day afloat
 * @param to last day afloat
 */
public record Season(MonthDay from, MonthDay to) {
  /** Whether the boat is usually afloat on this day. */
  public boolean afloat(LocalDate day) {
    MonthDay today = MonthDay.from(day);
    boolean begun = !today.isBefore(from);
    boolean notOver = !today.isAfter(to);
    return from.isAfter(to) ? begun || notOver : begun && notOver;
  }
}
