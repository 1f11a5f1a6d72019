package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import limberboard.library.value.Consequence;
import limberboard.library.value.Need;

/**
 * How much danger a piece of due work takes out, as a number: an estimate, made to be compared and
 * added up. By what follows when the work is left undone 1000 (sinks), 300 (hurts), 30 (stops), 10
 * (costs) or 1 (looks); three times that for a must; growing with the time it is overdue, up to
 * twice that when it is overdue by its whole interval. Counted in tenths, so that all numbers are
 * whole. Optional work takes out none, nor does what only looks and is no must: they count as
 * comfort, of which no amount outweighs any danger. Stateless.
 */
public final class DangerScale {
  private static final int TENTHS = 10;
  private static final int MUST = 3;

  private DangerScale() {}

  /**
   * The danger that work takes out.
   *
   * @param consequence what follows when it is left undone
   * @param need how much it is needed
   * @param overdue tenths of its interval by which it will be overdue, 0 to 10
   */
  public static long danger(Consequence consequence, Need need, int overdue) {
    boolean comfort =
        need == Need.OPTIONAL || need == Need.SHOULD && consequence == Consequence.LOOKS;
    return comfort
        ? 0
        : (long) weight(consequence) * (need == Need.MUST ? MUST : 1) * (TENTHS + overdue);
  }

  /** The comfort that work brings: 0 where it takes out danger, otherwise 1 to 5. */
  public static long comfort(Consequence consequence, Need need) {
    return danger(consequence, need, 0) > 0
        ? 0
        : Consequence.values().length - consequence.ordinal();
  }

  /** What a consequence weighs. */
  static int weight(Consequence consequence) {
    return switch (consequence) {
      case SINKS -> 1000;
      case HURTS -> 300;
      case STOPS -> 30;
      case COSTS -> 10;
      case LOOKS -> 1;
    };
  }

  /**
   * By how many tenths of its interval work will be overdue on a day, 0 to 10.
   *
   * @param since from when the interval runs
   * @param runsOut its last day
   * @param day the day
   */
  static int overdue(LocalDate since, LocalDate runsOut, LocalDate day) {
    long length = Math.max(1, ChronoUnit.DAYS.between(since, runsOut));
    long over = ChronoUnit.DAYS.between(runsOut, day);
    return (int) Math.max(0, Math.min(TENTHS, over * TENTHS / length));
  }
}
