package limberboard.trace;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import limberboard.library.value.Likelihood;

/**
 * Says a chance in words: the likelihood words of the file formats in reverse. The nearest value of
 * {@link Likelihood#scale()} is taken, the higher one half-way between two, and said as one says it
 * of a single thing: what happens <i>very often</i> is <i>very likely</i>.
 */
final class ChanceWord {
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

  private static final List<String> NUMBERS =
      List.of("two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");
  private static final double LEADING = 0.39;
  private static final double RARE = 0.02;

  private ChanceWord() {}

  /**
   * The chance in words for a list of causes, the likeliest first: where many causes share it, the
   * leading ones would all be called unlikely, which tells nothing; so what is less likely than not
   * is said as one in so many.
   *
   * @param chance 0 to 1
   */
  static String listed(double chance) {
    if (chance >= LEADING || chance < RARE) {
      return of(chance);
    }
    long many = Math.round(1 / chance);
    return "about one in " + (many <= 10 ? NUMBERS.get((int) many - 2) : rounded(many));
  }

  /** To twelve, fifteen and twenty, and to tens from there. */
  private static String rounded(long many) {
    long step = many <= 12 ? 2 : many <= 20 ? 5 : 10;
    return Long.toString(step * Math.round((double) many / step));
  }

  /**
   * The chance in words.
   *
   * @param chance 0 to 1
   */
  static String of(double chance) {
    return Likelihood.scale().entrySet().stream()
        .min(Comparator.comparingDouble(entry -> Math.abs(entry.getValue() - chance)))
        .map(entry -> SAID.getOrDefault(entry.getKey(), TraceWording.spoken(entry.getKey())))
        .orElseThrow();
  }
}
