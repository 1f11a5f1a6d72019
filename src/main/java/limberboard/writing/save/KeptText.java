package limberboard.writing.save;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import limberboard.writing.PageText;

/**
 * A page's text that was being typed, kept until it is saved or thrown away.
 *
 * @param path of the page's file, relative to the workspace
 * @param opened what tells whether the file is still as it was opened, see {@link #mark}; empty for
 *     a page that was not there
 * @param at when it was kept
 * @param text what was typed, to the letter
 */
public record KeptText(String path, String opened, Instant at, PageText text) {
  private static final String PATH = "page: ";
  private static final String OPENED = "opened: ";
  private static final String AT = "kept: ";

  /** A mark of a text: another text has another. */
  public static String mark(PageText text) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.bytes());
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** A text that is kept now. */
  public static KeptText of(String path, Optional<PageText> opened, Instant at, PageText text) {
    return new KeptText(path, opened.map(KeptText::mark).orElse(""), at, text);
  }

  /** Whether a file is still as it was when this text was begun. */
  public boolean goesOnFrom(Optional<PageText> now) {
    return now.map(KeptText::mark).orElse("").equals(opened);
  }

  /** As it lies in its file: three lines, a blank one, and the text to the letter. */
  byte[] bytes() {
    String head = PATH + path + "\n" + OPENED + opened + "\n" + AT + at + "\n\n";
    return (head + text.text()).getBytes(StandardCharsets.UTF_8);
  }

  /** Reads a file; empty when it is none of these. */
  static Optional<KeptText> read(byte[] bytes) {
    String all = new String(bytes, StandardCharsets.UTF_8);
    int blank = all.indexOf("\n\n");
    String[] head = blank < 0 ? new String[0] : all.substring(0, blank).split("\n", -1);
    if (head.length != 3
        || !head[0].startsWith(PATH)
        || !head[1].startsWith(OPENED)
        || !head[2].startsWith(AT)) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new KeptText(
              head[0].substring(PATH.length()),
              head[1].substring(OPENED.length()),
              Instant.parse(head[2].substring(AT.length())),
              new PageText(all.substring(blank + 2))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
