package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a person asks for, as they write it.
 *
 * @param minutes the time there is in all; empty when each free day has its own
 * @param until the day by which it is to be done
 * @param days free days as {@link FreeDaysReader} reads them; none to have some proposed
 * @param firstTime as {@link PlanWish#firstTime}
 */
public record PlanOrder(
    OptionalInt minutes, LocalDate until, List<String> days, boolean firstTime) {
  /** Copies the list. */
  public PlanOrder {
    days = List.copyOf(days);
  }
}
