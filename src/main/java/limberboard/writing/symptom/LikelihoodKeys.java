package limberboard.writing.symptom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.value.Likelihood;

/**
 * One key for each word of the scale of likelihoods: the digits from 0, never, to 9, almost always;
 * and for most the letter that the word begins with.
 */
public final class LikelihoodKeys {
  private static final Map<Character, String> KEYS = new LinkedHashMap<>();
  private static final Pattern PER_CENT = Pattern.compile("([0-9]{1,3})\\s*%");
  private static final double HUNDRED = 100;

  static {
    List<String> rising = new ArrayList<>(Likelihood.scale().keySet());
    java.util.Collections.reverse(rising);
    for (int i = 0; i < rising.size() - 1; i++) {
      KEYS.put((char) ('0' + i), rising.get(i));
    }
    List.of("always", "very-often", "usually", "often", "even", "sometimes", "rarely", "never")
        .forEach(word -> KEYS.put(word.charAt(0), word));
  }

  private LikelihoodKeys() {}

  /** The word that a key stands for; a capital counts as a small letter. */
  public static Optional<String> word(char key) {
    return Optional.ofNullable(KEYS.get(Character.toLowerCase(key)));
  }

  /** The keys of a word, in order: {@code 7, u}. */
  public static List<String> keys(String word) {
    return KEYS.entrySet().stream()
        .filter(each -> each.getValue().equals(word))
        .map(each -> String.valueOf(each.getKey()))
        .toList();
  }

  /**
   * A likelihood as it is written in a header, from what a person typed: a word of the scale, with
   * spaces or hyphens, a per cent, or a number from 0 to 1; empty when it is none of these.
   */
  public static Optional<String> typed(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
    Matcher share = PER_CENT.matcher(text.strip());
    if (share.matches()) {
      int percent = Integer.parseInt(share.group(1));
      return percent <= HUNDRED
          ? Optional.of(Double.toString(percent / HUNDRED))
          : Optional.empty();
    }
    return isLikelihood(word) ? Optional.of(word) : Optional.empty();
  }

  /** Whether it is a word of the scale or a number from 0 to 1. */
  static boolean isLikelihood(String text) {
    return Likelihood.scale().containsKey(text)
        || text.matches("[01](?:\\.[0-9]{1,9})?") && Double.parseDouble(text) <= 1;
  }
}
