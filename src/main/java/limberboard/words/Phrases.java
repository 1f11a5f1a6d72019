package limberboard.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Whether a sentence has a word or phrase in it, in whatever form of the word: <i>seacock</i> is in
 * <i>Shut the seacocks</i>, <i>charge</i> in <i>while it is charging</i>. Immutable.
 */
public final class Phrases {
  private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");

  private final List<String> words;

  /** The words of a text, to be asked for many phrases. */
  public Phrases(String text) {
    this.words = stems(text);
  }

  /** Whether the words of a phrase stand one after another in the text; no words stand nowhere. */
  public boolean has(String phrase) {
    List<String> sought = stems(phrase);
    for (int i = 0; !sought.isEmpty() && i + sought.size() <= words.size(); i++) {
      if (words.subList(i, i + sought.size()).equals(sought)) {
        return true;
      }
    }
    return false;
  }

  /** The words of a text, each without its endings. */
  public static List<String> stems(String text) {
    List<String> stems = new ArrayList<>();
    for (String word : NO_WORD.split(text.toLowerCase(Locale.ROOT))) {
      if (!word.isEmpty()) {
        stems.add(Stem.of(word));
      }
    }
    return stems;
  }
}
