package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import limberboard.letters.recognise.KeyNumbers.Numbers;

/**
 * How much each word speaks for each of a few topics: a multinomial logistic regression over what
 * texts have (A. Genkin, D. Lewis and D. Madigan, Large-scale Bayesian logistic regression for text
 * categorization, Technometrics 49(3), 2007), learnt by gradient steps that shrink as a word is met
 * (J. Duchi, E. Hazan and Y. Singer, Adaptive subgradient methods, JMLR 12, 2011). The same
 * examples give the same weights. Immutable.
 */
final class WordRegression {
  private static final double STEP = 0.5;
  private static final long SEED = 29;
  private static final double LEAST_SLOPE = 2e-3;

  private final KeyNumbers keys;
  private final List<float[]> weights = new ArrayList<>();
  private final float[] constant;
  private final int topics;
  private final double shortest;

  /**
   * A text to learn from.
   *
   * @param keys what it has
   * @param topics the topics that it is about, alike
   * @param weight how much it counts, more than 0
   */
  record Example(Set<String> keys, Set<Integer> topics, double weight) {
    Example {
      keys = Set.copyOf(keys);
      topics = Set.copyOf(topics);
    }
  }

  /**
   * Learns.
   *
   * @param topics the number of topics
   * @param shortest what a text's squares come to at least, so that few words say little
   * @param rounds how often each example is gone through
   * @param ridge how strongly large weights are held back, 0 or more
   */
  WordRegression(List<Example> examples, int topics, double shortest, int rounds, double ridge) {
    this.topics = topics;
    this.shortest = shortest;
    keys = new KeyNumbers(examples, Example::keys);
    for (int i = 0; i < keys.size(); i++) {
      weights.add(new float[topics]);
    }
    constant = new float[topics];
    new Learning(examples, ridge).rounds(rounds);
  }

  private double[] sums(Numbers text) {
    double[] sums = new double[topics];
    for (int topic = 0; topic < topics; topic++) {
      sums[topic] = constant[topic];
    }
    for (int i = 0; i < text.keys().length; i++) {
      float[] weight = weights.get(text.keys()[i]);
      for (int topic = 0; topic < topics; topic++) {
        sums[topic] += weight[topic] * text.values()[i];
      }
    }
    return sums;
  }

  private static double[] chances(double[] sums) {
    double most = Double.NEGATIVE_INFINITY;
    for (double sum : sums) {
      most = Math.max(most, sum);
    }
    double all = 0;
    double[] chances = new double[sums.length];
    for (int i = 0; i < sums.length; i++) {
      chances[i] = Math.exp(sums[i] - most);
      all += chances[i];
    }
    for (int i = 0; i < sums.length; i++) {
      chances[i] /= all;
    }
    return chances;
  }

  /** How likely a text is about each topic: 0 to 1, together 1. */
  double[] chances(Collection<String> keys) {
    return chances(sums(this.keys.of(keys, shortest)));
  }

  /** How much something speaks for a topic rather than for another; 0 of what is not known. */
  double weight(String key, int topic, int rather) {
    OptionalInt number = keys.of(key);
    if (number.isEmpty()) {
      return 0;
    }
    float[] weight = weights.get(number.getAsInt());
    return (weight[topic] - weight[rather]) * keys.rarity(number.getAsInt());
  }

  private final class Learning {
    private final List<Numbers> texts = new ArrayList<>();
    private final List<Example> examples;
    private final double ridge;
    private final List<float[]> squares = new ArrayList<>();
    private final float[] constantSquares = new float[topics];

    Learning(List<Example> examples, double ridge) {
      this.examples = examples;
      this.ridge = ridge;
      examples.forEach(example -> texts.add(keys.of(example.keys(), shortest)));
      weights.forEach(weight -> squares.add(new float[topics]));
    }

    void rounds(int rounds) {
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < examples.size(); i++) {
        order.add(i);
      }
      Random random = new Random(SEED);
      for (int round = 0; round < rounds; round++) {
        Collections.shuffle(order, random);
        order.forEach(this::step);
      }
    }

    private void step(int at) {
      Numbers text = texts.get(at);
      Example example = examples.get(at);
      double[] wrong = chances(sums(text));
      for (int topic : example.topics()) {
        wrong[topic] -= 1.0 / example.topics().size();
      }
      for (int topic = 0; topic < topics; topic++) {
        double slope = wrong[topic] * example.weight();
        if (Math.abs(slope) > LEAST_SLOPE) {
          move(constant, constantSquares, topic, slope);
          for (int i = 0; i < text.keys().length; i++) {
            int key = text.keys()[i];
            float[] weight = weights.get(key);
            move(weight, squares.get(key), topic, slope * text.values()[i] + ridge * weight[topic]);
          }
        }
      }
    }

    private static void move(float[] weight, float[] squares, int topic, double slope) {
      squares[topic] += (float) (slope * slope);
      weight[topic] -= (float) (STEP * slope / Math.sqrt(squares[topic] + 1e-6));
    }
  }
}
