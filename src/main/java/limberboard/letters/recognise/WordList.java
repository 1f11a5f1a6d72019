package limberboard.letters.recognise;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reads the lists of words that come with the program, which a person can edit. */
final class WordList {
  private WordList() {}

  /** The lines of a list, without comments and blank ones. */
  static List<String> lines(String name) {
    InputStream stream = Objects.requireNonNull(WordList.class.getResourceAsStream(name), name);
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty() && !line.startsWith("#"))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own word list cannot be read", e);
    }
  }

  /** What stands between commas. */
  static List<String> phrases(String line) {
    return Arrays.stream(line.split(","))
        .map(String::strip)
        .filter(phrase -> !phrase.isEmpty())
        .toList();
  }

  /** One group of phrases a line. */
  static List<List<String>> groups(String name) {
    return lines(name).stream().map(WordList::phrases).toList();
  }

  /** Sections that begin with a name in square brackets. */
  static Map<String, List<String>> sections(String name) {
    Map<String, StringBuilder> sections = new LinkedHashMap<>();
    StringBuilder now = new StringBuilder();
    for (String line : lines(name)) {
      if (line.startsWith("[")) {
        now = new StringBuilder();
        sections.put(line.substring(1, line.length() - 1), now);
      } else {
        now.append(line).append(' ');
      }
    }
    Map<String, List<String>> read = new LinkedHashMap<>();
    sections.forEach((section, text) -> read.put(section, phrases(text.toString())));
    return read;
  }
}
