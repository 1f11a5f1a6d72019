package limberboard.letters.recognise;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import limberboard.library.problem.Nearest;

/**
 * Finds names of boats in letters, also misspelt, in two words or as one's own: "redshanks keel".
 */
final class NameFinder {
  private static final int LEAST_MISSPELT = 6;
  private static final int LONG = 8;
  private static final Set<String> PLACES =
      Set.of(
          "terrace",
          "cottage",
          "house",
          "road",
          "street",
          "lane",
          "close",
          "avenue",
          "farm",
          "cottages",
          "court",
          "way",
          "hotel",
          "inn");

  private final Set<String> names = new TreeSet<>();

  /**
   * A name that stands in a letter.
   *
   * @param name the name, in small letters
   * @param words how many words it is written in
   * @param exact whether it is written as it should be
   * @param owns whether something is said to be hers
   */
  record Found(String name, int words, boolean exact, boolean owns) {}

  /** Finds these names. */
  NameFinder(Set<String> names) {
    names.forEach(name -> this.names.add(name.toLowerCase(Locale.ROOT)));
  }

  /** The names, in small letters. */
  Set<String> all() {
    return names;
  }

  /** The name that begins with a word, if any. */
  Optional<Found> at(LetterText text, int at) {
    String word = text.words().get(at).word().word().replace('’', '\'');
    boolean owns = word.endsWith("'s");
    String bare = owns ? word.substring(0, word.length() - 2) : word;
    if (at + 1 < text.words().size()) {
      String next = text.words().get(at + 1).word().word();
      if (PLACES.contains(next) && text.isName(at + 1)) {
        return Optional.empty();
      }
      if (word.length() > 2 && names.contains(word + next)) {
        return Optional.of(new Found(word + next, 2, true, false));
      }
    }
    if (names.contains(bare)) {
      return Optional.of(new Found(bare, 1, true, owns));
    }
    if (bare.endsWith("s") && names.contains(bare.substring(0, bare.length() - 1))) {
      return Optional.of(new Found(bare.substring(0, bare.length() - 1), 1, true, true));
    }
    if (bare.length() < LEAST_MISSPELT) {
      return Optional.empty();
    }
    return names.stream()
        .filter(name -> isLike(bare, name))
        .findFirst()
        .map(name -> new Found(name, 1, false, owns));
  }

  private static boolean isLike(String word, String name) {
    int most = name.length() >= LONG ? 2 : 1;
    return name.length() >= LEAST_MISSPELT
        && word.charAt(0) == name.charAt(0)
        && Math.abs(word.length() - name.length()) <= most
        && Nearest.distance(word, name) <= most;
  }
}
