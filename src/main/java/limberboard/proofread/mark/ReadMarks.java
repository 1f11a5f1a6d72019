package limberboard.proofread.mark;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import limberboard.library.header.HeaderSource;
import limberboard.library.header.HeaderText;
import limberboard.library.header.YamlText.Unchangeable;

/**
 * When pages were last read in full, and whether they have changed since. What was read is known by
 * a digest of the page's text, without what readers and authors say of the reading itself.
 * Stateless.
 */
public final class ReadMarks {
  private static final List<String> OF_READING = List.of("read", "answered");
  private static final int LETTERS = 12;

  private ReadMarks() {}

  /**
   * What a page's text is known by: twelve letters of the SHA-256 of its header without {@code
   * read} and {@code answered}, and of its body. Blanks at the ends of lines do not count.
   */
  public static String digest(String text) {
    Optional<HeaderText> parts = HeaderText.part(text);
    String header = parts.map(HeaderText::header).map(ReadMarks::plain).orElse("");
    String body = parts.map(HeaderText::body).orElse(text);
    List<String> lines = new ArrayList<>();
    (header + "\n---\n" + body).lines().map(String::stripTrailing).forEach(lines::add);
    return hash(String.join("\n", lines).strip());
  }

  private static String plain(String header) {
    HeaderSource source = new HeaderSource(header);
    for (String key : OF_READING) {
      try {
        source = source.without(key);
      } catch (Unchangeable e) {
        return header;
      }
    }
    return source.text();
  }

  /**
   * A header that says that the page was read.
   *
   * @param text the page's whole text
   * @param on the day
   * @param by what kind of reader
   * @throws Unchangeable when the header cannot be written without touching anything else
   */
  public static String marked(String text, LocalDate on, String by) throws Unchangeable {
    String header = HeaderText.part(text).map(HeaderText::header).orElse("");
    String value =
        "{on: " + on + ", by: \"" + by.replace("\"", "'") + "\", of: " + digest(text) + "}";
    HeaderSource source = new HeaderSource(header);
    HeaderSource marked =
        source.keys().contains("read")
            ? source.withLetters("read", value)
            : new HeaderSource(header + "read: " + value + "\n");
    return marked.text();
  }

  private static String hash(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] bytes = digest.digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(bytes).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
