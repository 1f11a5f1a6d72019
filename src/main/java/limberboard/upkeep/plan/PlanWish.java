package limberboard.upkeep.plan;

import java.time.LocalDate;
import limberboard.words.Minutes;

/**
 * What a plan is asked for.
 *
 * @param days the days there are
 * @param until the day by which it is to be done, not before the day of asking
 * @param firstTime whether the work is done for the first time, which takes half as much again
 */
public record PlanWish(FreeDays days, LocalDate until, boolean firstTime) {
  /**
   * Minutes as this person takes them, rounded up.
   *
   * @param practised minutes of a practised person
   */
  public int minutes(double practised) {
    return (int) Math.ceil(firstTime ? practised * Minutes.FIRST_TIME : practised);
  }
}
