package limberboard.words;

import java.util.Comparator;
import java.util.Map;
import limberboard.library.value.Likelihood;

/**
 * Says a chance in words: the likelihood words of the file formats in reverse. The nearest value of
 * {@link Likelihood#scale()} is taken, the higher one half-way between two, and said as one says it
 * of a single thing: what happens <i>very often</i> is <i>very likely</i>.
 */
public final class ChanceWords {
  private static final Map<String, String> SAID =
      Map.ofEntries(
          Map.entry("always", "as good as certain"),
          Map.entry("almost-always", "almost certain"),
          Map.entry("very-often", "very likely"),
          Map.entry("usually", "likely"),
          Map.entry("often", "rather likely"),
          Map.entry("even", "as likely as not"),
          Map.entry("sometimes", "less likely than not"),
          Map.entry("seldom", "unlikely"),
          Map.entry("rarely", "very unlikely"),
          Map.entry("almost-never", "most unlikely"),
          Map.entry("never", "as good as ruled out"));

  private static final double LEADING = 0.39;
  private static final double RARE = 0.02;

  private ChanceWords() {}

  /**
   * The chance in words for a list of causes, the likeliest first: where many causes share it, the
   * leading ones would all be called unlikely, which tells nothing; so what is less likely than not
   * is said as one in so many.
   *
   * @param chance 0 to 1
   */
  public static String listed(double chance) {
    if (chance >= LEADING || chance < RARE) {
      return of(chance);
    }
    long many = Math.round(1 / chance);
    return "about one in " + CountWords.word(rounded(many));
  }

  /** To twelve, fifteen and twenty, and to tens from there. */
  private static long rounded(long many) {
    long step = many <= 10 ? 1 : many <= 12 ? 2 : many <= 20 ? 5 : 10;
    return step * Math.round((double) many / step);
  }

  /**
   * The chance in words.
   *
   * @param chance 0 to 1
   */
  public static String of(double chance) {
    String nearest = nearest(chance);
    return SAID.getOrDefault(nearest, Sentences.spoken(nearest));
  }

  /**
   * How often something happens, in the nearest word of the scale: {@code very often}.
   *
   * @param chance 0 to 1
   */
  public static String often(double chance) {
    String nearest = nearest(chance);
    return nearest.equals("even") ? "as often as not" : Sentences.spoken(nearest);
  }

  private static String nearest(double chance) {
    return Likelihood.scale().entrySet().stream()
        .min(Comparator.comparingDouble(entry -> Math.abs(entry.getValue() - chance)))
        .map(Map.Entry::getKey)
        .orElseThrow();
  }
}
