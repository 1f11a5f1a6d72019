package limberboard.history.parts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A text taken apart, to the letter.
 *
 * @param opening what stands before the first key: the line {@code ---} of a page
 * @param header the keys, each with its lines and the remarks above it
 * @param closing what stands after the last key: remarks, and the line {@code ---} of a page
 * @param body the pieces of the Markdown: paragraphs, headings, items, rows, blank lines
 */
public record TextParts(
    String opening, Map<String, String> header, String closing, List<String> body) {
  private static final String FENCE = "---";

  /** Keeps the order of keys, and lets nobody change them. */
  public TextParts {
    header = Collections.unmodifiableMap(new LinkedHashMap<>(header));
    body = List.copyOf(body);
  }

  /** The parts of a page; where its header is none, or cannot be taken apart, all is body. */
  public static TextParts ofPage(String text) {
    List<String> lines = WholeLines.of(text);
    int end = headerEnd(lines);
    if (end > 0) {
      Optional<KeyedText> keyed = KeyedText.of(String.join("", lines.subList(1, end)));
      if (keyed.isPresent()) {
        return new TextParts(
            lines.get(0),
            keyed.get().keys(),
            keyed.get().rest() + lines.get(end),
            Paragraphs.of(String.join("", lines.subList(end + 1, lines.size()))));
      }
    }
    return new TextParts("", Map.of(), "", Paragraphs.of(text));
  }

  /** The parts of a file that is all YAML; where it cannot be taken apart, its lines are body. */
  public static TextParts ofYaml(String text) {
    return KeyedText.of(text)
        .map(keyed -> new TextParts("", keyed.keys(), keyed.rest(), List.of()))
        .orElseGet(() -> new TextParts("", Map.of(), "", WholeLines.of(text)));
  }

  /** The parts of another text: its lines. */
  public static TextParts ofLines(String text) {
    return new TextParts("", Map.of(), "", WholeLines.of(text));
  }

  /**
   * The parts of a file by its name.
   *
   * @param path its path, with {@code /}
   */
  public static TextParts of(String path, String text) {
    if (path.endsWith(".md")) {
      return ofPage(text);
    }
    return path.endsWith(".yaml") ? ofYaml(text) : ofLines(text);
  }

  private static int headerEnd(List<String> lines) {
    if (lines.isEmpty() || !lines.get(0).replace("\uFEFF", "").stripTrailing().equals(FENCE)) {
      return -1;
    }
    for (int i = 1; i < lines.size(); i++) {
      if (lines.get(i).stripTrailing().equals(FENCE)) {
        return i;
      }
    }
    return -1;
  }

  /** The lines of a key. */
  public Optional<String> key(String name) {
    return Optional.ofNullable(header.get(name));
  }

  /** A key's value where it stands on one line behind it. */
  public Optional<String> value(String name) {
    return key(name)
        .map(
            lines ->
                WholeLines.of(lines).stream()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList())
        .filter(lines -> lines.size() == 1)
        .map(lines -> lines.get(0).substring(lines.get(0).indexOf(':') + 1).strip());
  }

  /** The heading above a piece of the body, or nothing. */
  public String heading(int piece) {
    for (int i = Math.min(piece, body.size() - 1); i >= 0; i--) {
      if (Paragraphs.isHeading(body.get(i))) {
        return body.get(i).replaceAll("^#+|#+\\s*$", "").strip();
      }
    }
    return "";
  }

  /** Put together again, to the letter. */
  public String text() {
    List<String> all = new ArrayList<>(header.size() + body.size() + 2);
    all.add(opening);
    all.addAll(header.values());
    all.add(closing);
    all.addAll(body);
    return String.join("", all);
  }
}
