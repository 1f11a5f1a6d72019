package limberboard.search;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Words of everyday sentences that say little about what is meant. Immutable.
 *
 * @param stop words that are not looked for at all
 * @param faint words that count for little
 */
record StopWords(Set<String> stop, Set<String> faint) {
  /** Copies the sets. */
  StopWords {
    stop = Set.copyOf(stop);
    faint = Set.copyOf(faint);
  }

  /** The lists that come with the program. */
  static StopWords english() {
    return new StopWords(read("stop-words.txt"), read("faint-words.txt"));
  }

  /** Whether a word is not looked for: it is on the list, or a single letter or digit. */
  boolean isStop(String word) {
    return word.length() == 1 || stop.contains(word);
  }

  /** Whether a word counts for little: it is on the list, or a number. */
  boolean isFaint(String word) {
    return faint.contains(word) || Character.isDigit(word.charAt(0));
  }

  /** A digest of the words that are not looked for, which names are kept without. */
  String digest() {
    return new Digest().add(new TreeSet<>(stop)).hex();
  }

  /** The words of one of the lists beside this class. */
  static Set<String> read(String name) {
    InputStream stream = Objects.requireNonNull(StopWords.class.getResourceAsStream(name), name);
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .flatMap(line -> Arrays.stream(line.strip().split("\\s+")))
          .filter(word -> !word.isEmpty())
          .collect(Collectors.toUnmodifiableSet());
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own word list cannot be read", e);
    }
  }
}
