package limberboard.library.value;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A chance, written as a word or as a number.
 *
 * <p>The words' numbers follow the averages that F. Mosteller and C. Youtz tabulate over twenty
 * studies of what people mean by such words (<i>Quantifying Probabilistic Expressions</i>,
 * Statistical Science 5(1), 1990, pp. 2–12, Table 1), rounded to whole per cents. The figures were
 * set down from memory of that table; no copy of it was at hand to correct them. Read in its
 * abstract: there were 52 expressions, the averages differed little between studies, and a word
 * such as <i>very</i> halves the distance to the nearer end, 0 or 100.
 *
 * @param text as it was written
 * @param value 0 to 1
 */
public record Likelihood(String text, double value) {
  private static final Map<String, Double> SCALE = new LinkedHashMap<>();

  static {
    SCALE.put("always", 0.99);
    SCALE.put("almost-always", 0.93);
    SCALE.put("very-often", 0.84);
    SCALE.put("usually", 0.77);
    SCALE.put("often", 0.66);
    SCALE.put("even", 0.50);
    SCALE.put("sometimes", 0.28);
    SCALE.put("seldom", 0.16);
    SCALE.put("rarely", 0.08);
    SCALE.put("almost-never", 0.03);
    SCALE.put("never", 0.01);
  }

  /**
   * Checks the value.
   *
   * @throws IllegalArgumentException when the value is not within 0 to 1
   */
  public Likelihood {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(
          "a likelihood lies between 0 and 1, and " + text + " does not");
    }
  }

  /**
   * Reads a word of the scale or a number.
   *
   * @throws IllegalArgumentException when it is neither, with a message that lists the words
   */
  public static Likelihood parse(String text) {
    Double ofWord = SCALE.get(text);
    if (ofWord != null) {
      return new Likelihood(text, ofWord);
    }
    double number;
    try {
      number = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is no likelihood; write a number from 0 to 1 or one of "
              + String.join(", ", SCALE.keySet()),
          e);
    }
    return new Likelihood(text, number);
  }

  /** The scale: word to value, from always down to never. */
  public static Map<String, Double> scale() {
    return java.util.Collections.unmodifiableMap(SCALE);
  }

  /**
   * The file formats' rule for one cause and one check: answers whose likelihood is not given share
   * what is left to 1 in equal parts; where the given ones come to more than 1, or all are given,
   * they are divided by their sum. Where all are given as 0 they count as equal.
   *
   * @param given for each answer its likelihood, 0 to 1, if the page gives one
   */
  public static double[] shares(List<OptionalDouble> given) {
    double sum = given.stream().mapToDouble(value -> value.orElse(0)).sum();
    long open = given.stream().filter(OptionalDouble::isEmpty).count();
    double[] shares = new double[given.size()];
    if (open == 0 && sum == 0) {
      Arrays.fill(shares, 1.0 / shares.length);
      return shares;
    }
    boolean divide = open == 0 || sum > 1;
    for (int i = 0; i < shares.length; i++) {
      double value = given.get(i).orElse(divide ? 0 : (1 - sum) / open);
      shares[i] = divide ? value / sum : value;
    }
    return shares;
  }
}
