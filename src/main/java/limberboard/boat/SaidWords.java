package limberboard.boat;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import limberboard.library.problem.Nearest;

/**
 * What somebody said, word by word: in small letters, without accents and signs.
 *
 * @param all the words, in order
 */
record SaidWords(List<String> all) {
  private static final Pattern BETWEEN = Pattern.compile("[^a-z0-9]+");
  private static final Pattern MARKS = Pattern.compile("\\p{M}");
  private static final int LEAST_MISSPELT = 5;

  SaidWords {
    all = List.copyOf(all);
  }

  static SaidWords of(String text) {
    String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    List<String> words = new ArrayList<>(List.of(BETWEEN.split(plain.toLowerCase(Locale.ROOT))));
    words.removeIf(String::isEmpty);
    return new SaidWords(words);
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  int size() {
    return all.size();
  }

  /** Where these words stand one after another; -1 when they do not. */
  int indexOf(SaidWords other) {
    return other.isEmpty() ? -1 : Collections.indexOfSubList(all, other.all());
  }

  /** The words without those from one place up to another. */
  SaidWords without(int from, int to) {
    List<String> left = new ArrayList<>(all.subList(0, from));
    left.addAll(all.subList(to, all.size()));
    return new SaidWords(left);
  }

  /** The words without these. */
  SaidWords without(Set<String> words) {
    return new SaidWords(all.stream().filter(word -> !words.contains(word)).toList());
  }

  /**
   * Whether a word may be the other one misspelt: both long enough, with the same first letter, no
   * number, and few letters apart.
   */
  static boolean isLike(String word, String other) {
    return word.length() >= LEAST_MISSPELT
        && other.length() >= LEAST_MISSPELT
        && word.charAt(0) == other.charAt(0)
        && Character.isLetter(word.charAt(word.length() - 1))
        && Nearest.to(word, List.of(other)).isPresent();
  }
}
