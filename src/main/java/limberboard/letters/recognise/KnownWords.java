package limberboard.letters.recognise;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import limberboard.library.problem.Nearest;

/**
 * Words that are spelt rightly, and which of them a misspelt one may be: one letter apart
 * (inserted, left out, changed, or swapped with its neighbour), with the same first letter.
 * Recognised through the words with one letter left out, so that the cost does not grow with the
 * number of words (the symmetric deletion of F. Mor and A. Fraenkel, A hash code method for
 * detecting and correcting spelling errors, CACM 25(12), 1982). Immutable.
 */
final class KnownWords {
  private static final int SHORTEST = 5;
  private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}']*");

  private final Map<String, Integer> known = new HashMap<>();
  private final Map<String, Set<String>> without = new HashMap<>();

  /** The words of texts. */
  KnownWords(Stream<String> texts) {
    texts.forEach(this::add);
    known.keySet().stream()
        .filter(word -> word.length() >= SHORTEST)
        .forEach(
            word ->
                shortened(word)
                    .forEach(key -> without.computeIfAbsent(key, k -> new HashSet<>()).add(word)));
  }

  private void add(String text) {
    Matcher words = WORD.matcher(text.toLowerCase(Locale.ROOT));
    while (words.find()) {
      known.merge(words.group(), 1, Integer::sum);
    }
  }

  /** The word and all that are left of it when one letter goes. */
  private static List<String> shortened(String word) {
    Set<String> all = new HashSet<>();
    all.add(word);
    for (int i = 1; i < word.length(); i++) {
      all.add(word.substring(0, i) + word.substring(i + 1));
    }
    return List.copyOf(all);
  }

  /** The word that a misspelt one most likely is, the most frequent of those that may be. */
  Optional<String> meant(String word) {
    if (word.length() < SHORTEST || known.containsKey(word)) {
      return Optional.empty();
    }
    return shortened(word).stream()
        .flatMap(key -> without.getOrDefault(key, Set.of()).stream())
        .distinct()
        .filter(each -> each.charAt(0) == word.charAt(0) && Nearest.distance(word, each) == 1)
        .max(
            (a, b) ->
                known.get(a).equals(known.get(b))
                    ? b.compareTo(a)
                    : Integer.compare(known.get(a), known.get(b)));
  }
}
