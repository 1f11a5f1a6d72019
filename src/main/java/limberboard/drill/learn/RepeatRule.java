package limberboard.drill.learn;

import java.time.LocalDate;

/**
 * When something that was drilled comes back: after growing intervals, by the rule SM-2 of P. A.
 * Woźniak, <i>Optimization of learning</i>, 1990, section 3.2. The first interval is a day, the
 * second six days, each further one the former times the easiness, rounded up to whole days; the
 * easiness begins at 2.5, moves with each grade and never falls below 1.3; a grade below 3 begins
 * again with the first interval and leaves the easiness as it is.
 *
 * <p>One sentence of the rule is left out: that whatever was graded below 4 is repeated on the same
 * day until it is not. A drill takes long enough.
 *
 * @param repetitions how often it went well in a row
 * @param easiness how much each interval is longer than the one before, 1.3 or more
 * @param days the interval until it comes back, 0 when it was never drilled
 * @param due the day it comes back on
 */
public record RepeatRule(int repetitions, double easiness, int days, LocalDate due) {
  /** The best grade. */
  public static final int BEST = 5;

  private static final double BEGINNING = 2.5;
  private static final double LEAST = 1.3;
  private static final int PASSED = 3;
  private static final int FIRST = 1;
  private static final int SECOND = 6;
  private static final double ROUNDING = 1e-9;

  /** Of something never drilled: due at once. */
  public static RepeatRule begin(LocalDate on) {
    return new RepeatRule(0, BEGINNING, 0, on);
  }

  /**
   * After it was drilled once more.
   *
   * @param grade how well it went, 0 to {@value #BEST}
   * @param on the day it was drilled
   */
  public RepeatRule after(int grade, LocalDate on) {
    if (grade < 0 || grade > BEST) {
      throw new IllegalArgumentException("a grade is from 0 to " + BEST + ", not " + grade);
    }
    if (grade < PASSED) {
      return new RepeatRule(0, easiness, FIRST, on.plusDays(FIRST));
    }
    double easier = easier(grade);
    int next =
        switch (repetitions) {
          case 0 -> FIRST;
          case 1 -> SECOND;
          default -> (int) Math.ceil(days * easier - ROUNDING);
        };
    return new RepeatRule(repetitions + 1, easier, next, on.plusDays(next));
  }

  private double easier(int grade) {
    int missing = BEST - grade;
    return Math.max(LEAST, easiness + (0.1 - missing * (0.08 + missing * 0.02)));
  }
}
