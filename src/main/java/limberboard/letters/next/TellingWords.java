package limberboard.letters.next;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import limberboard.search.TextWords;
import limberboard.search.TextWords.TextWord;

/**
 * The words of a text that say what it is about, by stem, or by the group of words that stand for
 * each other in search: without words of grammar, numbers and what is only ever written with a
 * capital, which is a name. Immutable.
 */
final class TellingWords {
  private static final int SHORTEST = 3;
  private final TextWords reader;
  private final Set<String> never;

  /**
   * Reads texts.
   *
   * @param reader as search reads them
   * @param never texts whose words tell nothing, such as the names of boats
   */
  TellingWords(TextWords reader, List<String> never) {
    this.reader = reader;
    this.never = new HashSet<>();
    never.forEach(text -> reader.of(text).forEach(word -> this.never.add(word.stem())));
  }

  /** The keys of a text's words, in order, each with a word as it is meant. */
  Map<String, String> of(String text) {
    Map<String, String> found = new LinkedHashMap<>();
    for (TextWord word : reader.of(text)) {
      if (tells(word)) {
        keys(word).forEach(key -> found.putIfAbsent(key, word.word()));
      }
    }
    return found;
  }

  /** Words that stand for each other are one; any other goes by its stem. */
  private static Set<String> keys(TextWord word) {
    return word.marks().isEmpty() ? Set.of(word.stem()) : new TreeSet<>(word.marks());
  }

  private boolean tells(TextWord word) {
    return !word.stop()
        && !word.faint()
        && word.word().length() >= SHORTEST
        && word.word().chars().allMatch(Character::isLetter)
        && !never.contains(word.stem());
  }

  /** In how many of these texts each key stands. */
  Map<String, Integer> counted(List<String> texts) {
    Map<String, Integer> counts = new HashMap<>();
    texts.forEach(text -> of(text).keySet().forEach(stem -> counts.merge(stem, 1, Integer::sum)));
    return counts;
  }

  /** The keys that stand somewhere in these texts in small letters: what is left are names. */
  Set<String> plain(List<String> texts) {
    Set<String> plain = new HashSet<>();
    for (String text : texts) {
      for (TextWord word : reader.of(text)) {
        if (Character.isLowerCase(text.charAt(word.start()))) {
          plain.addAll(keys(word));
        }
      }
    }
    return plain;
  }
}
