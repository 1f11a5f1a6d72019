package limberboard.trace.learning;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * Draws things by chance, the same for the same seed. For one thread.
 *
 * @param random where chance comes from
 */
record Chance(Random random) {

  /** One of several, each with its weight, 0 or more, not all 0. */
  <T> T one(List<T> many, ToDoubleFunction<T> weight) {
    double left = random.nextDouble() * many.stream().mapToDouble(weight).sum();
    for (T each : many) {
      left -= weight.applyAsDouble(each);
      if (left < 0) {
        return each;
      }
    }
    return many.get(many.size() - 1);
  }

  /** One of several, all alike. */
  <T> T one(List<T> many) {
    return many.get(random.nextInt(many.size()));
  }

  /** The number of one of several shares. */
  int number(double... shares) {
    double left = random.nextDouble();
    for (int i = 0; i < shares.length - 1; i++) {
      left -= shares[i];
      if (left < 0) {
        return i;
      }
    }
    return shares.length - 1;
  }

  /** Whether something of this chance happens. */
  boolean happens(double chance) {
    return random.nextDouble() < chance;
  }

  /** A number around 1. */
  double around(double spread) {
    return StrictMath.exp(spread * random.nextGaussian());
  }
}
