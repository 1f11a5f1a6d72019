package limberboard.library.header;

import java.util.Optional;

/**
 * A page's file, parted into header and body.
 *
 * @param header the YAML between the two lines {@code ---}
 * @param headerLine the line on which the YAML begins, from 1
 * @param body the Markdown after it
 * @param bodyLine the line on which the Markdown begins, from 1
 */
public record HeaderText(String header, int headerLine, String body, int bodyLine) {
  private static final String FENCE = "---";

  /** Parts a file's text; empty when it does not begin with a closed header. */
  public static Optional<HeaderText> part(String text) {
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    int first = lineEnd(plain, 0);
    if (!plain.substring(0, first).stripTrailing().equals(FENCE)) {
      return Optional.empty();
    }
    int line = 2;
    for (int start = first + 1; start < plain.length(); line++) {
      int end = lineEnd(plain, start);
      if (plain.substring(start, end).stripTrailing().equals(FENCE)) {
        String body = end + 1 > plain.length() ? "" : plain.substring(end + 1);
        return Optional.of(new HeaderText(plain.substring(first + 1, start), 2, body, line + 1));
      }
      start = end + 1;
    }
    return Optional.empty();
  }

  private static int lineEnd(String text, int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end;
  }
}
