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
  private static final int SHORTEST = 4;

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

  private static List<String> stems(String text) {
    List<String> stems = new ArrayList<>();
    for (String word : NO_WORD.split(text.toLowerCase(Locale.ROOT))) {
      if (!word.isEmpty()) {
        stems.add(stem(word));
      }
    }
    return stems;
  }

  /** What is left of a word without the endings of plurals and of verbs. */
  private static String stem(String word) {
    String stem = word;
    if (stem.endsWith("ing")) {
      stem = single(cut(stem, "ing"), stem);
    } else if (stem.endsWith("ed")) {
      stem = single(cut(stem, "ed"), stem);
    } else if (stem.endsWith("es")) {
      stem = cut(stem, "es");
    } else if (!stem.endsWith("ss")) {
      stem = cut(stem, "s");
    }
    return cut(stem, "e");
  }

  private static String cut(String word, String ending) {
    int left = word.length() - ending.length();
    return word.endsWith(ending) && left >= SHORTEST - 1 ? word.substring(0, left) : word;
  }

  /** The one letter of two alike that an ending brought with it: bedding, bed. */
  private static String single(String stem, String word) {
    int last = stem.length() - 1;
    boolean twice =
        !stem.equals(word)
            && last > SHORTEST - 2
            && stem.charAt(last) == stem.charAt(last - 1)
            && "lsz".indexOf(stem.charAt(last)) < 0;
    return twice ? stem.substring(0, last) : stem;
  }
}
