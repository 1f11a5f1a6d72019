package limberboard.drill;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws by chance, each thing by its own name: what is drawn for one name depends on the seed and
 * that name alone, in whatever order things are asked for.
 *
 * @param seed what chance comes from
 */
record Drawing(long seed) {
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  /** A number from 0 to below 1. */
  double number(String name) {
    return new SplittableRandom(seed * SPREAD + name.hashCode()).split().nextDouble();
  }

  /** Whether something of this chance happens. */
  boolean happens(String name, double chance) {
    return number(name) < chance;
  }

  /** The number of one of several, each with its weight, 0 or more, not all 0. */
  int one(String name, double... weights) {
    double sum = 0;
    int last = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i];
      last = weights[i] > 0 ? i : last;
    }
    double left = number(name) * sum;
    for (int i = 0; i < last; i++) {
      left -= weights[i];
      if (left < 0) {
        return i;
      }
    }
    return last;
  }

  /** One of several, all alike. */
  <T> T one(String name, List<T> many) {
    return many.get((int) (number(name) * many.size()));
  }
}
