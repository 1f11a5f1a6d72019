package limberboard.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.letters.answer.AnswerDraft;

/**
 * How hard a text is to read, as the school grade of the Flesch–Kincaid formula: 0.39 × words a
 * sentence + 11.8 × syllables a word − 15.59. Source: Kincaid, Fishburne, Rogers and Chissom,
 * <i>Derivation of New Readability Formulas for Navy Enlisted Personnel</i>, Naval Technical
 * Training Command Research Branch Report 8-75 (1975), named from memory.
 *
 * <p>Syllables are counted by groups of vowels: a usual estimate, not the formula's own count.
 */
final class Readability {
  /** The highest grade that a whole draft may have. */
  static final double HARDEST = 8;

  private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}'’]*");
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?:])\\s+|\\n+");

  private Readability() {}

  /** The grade of a draft. */
  static double of(AnswerDraft draft) {
    return grade(draft.text());
  }

  /** The grade of a text; a line of its own is a sentence. */
  static double grade(String text) {
    int words = 0;
    int syllables = 0;
    int sentences = 0;
    for (String sentence : SENTENCE_END.split(text)) {
      int before = words;
      for (Matcher word = WORD.matcher(sentence); word.find(); ) {
        words++;
        syllables += syllables(word.group());
      }
      sentences += words > before ? 1 : 0;
    }
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
  }

  /**
   * The syllables of a word, at least one; a silent e at the end, and that of -ed, do not count.
   */
  static int syllables(String word) {
    String said =
        word.toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z]", "")
            .replaceAll("(?<=[^aeiouytd])e[ds]?$|(?<=[td])e$", "")
            .replaceAll("(?<=[^aeiouy])le?$", "el");
    int count = 0;
    for (Matcher vowels = VOWELS.matcher(said); vowels.find(); ) {
      count++;
    }
    return Math.max(1, count);
  }
}
