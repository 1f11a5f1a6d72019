package limberboard.letters.reply;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * What a letter without a fault is about, by a list of words beside this class that a person can
 * edit. It chooses the words of an answer and nothing else. Immutable.
 */
final class Matters {
  private static final String LIST = "matters.txt";
  private final List<Matter> matters;

  /**
   * A matter.
   *
   * @param words any of them tells of it
   * @param with of these there must be one as well, unless there are none
   */
  private record Matter(String name, List<String> words, List<String> with) {
    boolean isIn(String plain) {
      return words.stream().anyMatch(plain::contains)
          && (with.isEmpty() || with.stream().anyMatch(plain::contains));
    }
  }

  Matters() {
    InputStream stream = Objects.requireNonNull(Matters.class.getResourceAsStream(LIST), LIST);
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      matters =
          reader.lines().filter(line -> line.matches("[a-z-]+:.*")).map(Matters::matter).toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own list of matters cannot be read", e);
    }
  }

  private static Matter matter(String line) {
    String[] parts = line.split(":", 2);
    String[] lists = parts[1].split("\\+", 2);
    return new Matter(parts[0], words(lists[0]), lists.length < 2 ? List.of() : words(lists[1]));
  }

  private static List<String> words(String list) {
    return Arrays.stream(list.split(",")).map(Matters::plain).toList();
  }

  /** The matter of a text, such as {@code booking}; empty where no word of the list is in it. */
  String of(String text) {
    String plain = plain(text);
    return matters.stream()
        .filter(matter -> matter.isIn(plain))
        .map(Matter::name)
        .findFirst()
        .orElse("");
  }

  /** Small letters, digits and question marks with a space around each word. */
  private static String plain(String text) {
    return " "
        + text.toLowerCase(Locale.ROOT)
            .replace("?", " ? ")
            .replaceAll("[^\\p{L}\\p{N}?]+", " ")
            .strip()
        + " ";
  }
}
