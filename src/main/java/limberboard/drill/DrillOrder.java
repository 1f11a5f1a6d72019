package limberboard.drill;

import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * What a drill is made from: the same order on the same library and cases gives the same drill.
 *
 * @param symptom symptom id
 * @param boat boat id; of a boat that nobody has entered, the words that say all of her
 * @param on the day it is played on, which decides the boat's age
 * @param seed what chance comes from, 0 or more
 * @param hints how many hints the trainer allows, 0 to {@value #MOST_HINTS}
 * @param hides the number that stands for the hidden cause, see {@link HiddenNumber}; empty: the
 *     seed draws the cause
 */
public record DrillOrder(
    String symptom, String boat, LocalDate on, long seed, int hints, OptionalInt hides) {
  /** The most hints that can be allowed. */
  public static final int MOST_HINTS = 99;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException when one is out of its range
   */
  public DrillOrder {
    Objects.requireNonNull(hides);
    if (seed < 0) {
      throw new IllegalArgumentException("a seed is a whole number from 0, not " + seed);
    }
    if (hints < 0 || hints > MOST_HINTS) {
      throw new IllegalArgumentException(
          "hints are a number from 0 to " + MOST_HINTS + ", not " + hints);
    }
  }

  /** An order whose cause the seed draws. */
  public DrillOrder(String symptom, String boat, LocalDate on, long seed, int hints) {
    this(symptom, boat, on, seed, hints, OptionalInt.empty());
  }

  /** The same with another seed, which draws the cause. */
  public DrillOrder with(long otherSeed) {
    return new DrillOrder(symptom, boat, on, otherSeed, hints);
  }
}
