package limberboard.library.value;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Numbers as pages write them beside a unit: in digits, or the small ones in words. */
public final class NumberWords {
  /** A regular expression for one number; it has no groups. */
  public static final String PATTERN =
      "(?:\\d+(?:[.,]\\d+)?|\\b(?:a|an|one|two|three|four|five|six|seven|eight|nine|ten|twelve"
          + "|fifteen|twenty|thirty|forty|sixty|half an?)\\b)";

  private static final Map<String, Double> WORDS = words();

  private NumberWords() {}

  private static Map<String, Double> words() {
    Map<String, Double> words = new HashMap<>();
    String[] count = {
      "a", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
    };
    for (int i = 0; i < count.length; i++) {
      words.put(count[i], (double) Math.max(1, i));
    }
    words.put("an", 1.0);
    words.put("half a", 0.5);
    words.put("half an", 0.5);
    words.put("twelve", 12.0);
    words.put("fifteen", 15.0);
    words.put("twenty", 20.0);
    words.put("thirty", 30.0);
    words.put("forty", 40.0);
    words.put("sixty", 60.0);
    return words;
  }

  /**
   * The number that a text says.
   *
   * @param text something that {@link #PATTERN} matches
   * @throws NumberFormatException when it is no number
   */
  public static double of(String text) {
    Double word = WORDS.get(text.toLowerCase(Locale.ROOT));
    return word != null ? word : Double.parseDouble(text.replace(',', '.'));
  }
}
