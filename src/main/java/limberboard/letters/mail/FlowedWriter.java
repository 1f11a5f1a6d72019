package limberboard.letters.mail;

import java.util.regex.Pattern;

/**
 * Breaks text into lines that any mail program can show and put together again: {@code
 * format=flowed}, RFC 3676.
 */
final class FlowedWriter {
  /** The longest line, in characters without its end (RFC 3676, section 4.2). */
  static final int LONGEST = 78;

  private static final String SIGNATURE = "-- ";
  private static final Pattern TRAILING = Pattern.compile(" +$");
  private static final Pattern STUFFED = Pattern.compile("^(?: |>|From ).*");

  private FlowedWriter() {}

  /** The lines, each with its end, of text whose paragraphs stand in one line each. */
  static String broken(String text) {
    StringBuilder out = new StringBuilder();
    for (String paragraph : text.split("\r\n|\r|\n", -1)) {
      boolean signature = paragraph.equals(SIGNATURE);
      String said = signature ? paragraph : TRAILING.matcher(paragraph).replaceFirst("");
      paragraph(said, out);
    }
    return out.toString();
  }

  private static void paragraph(String said, StringBuilder out) {
    String rest = said;
    while (rest.length() > LONGEST) {
      int space = rest.lastIndexOf(' ', LONGEST - 2);
      if (space <= 0 || rest.substring(0, space).isBlank()) {
        space = rest.indexOf(' ', LONGEST - 1);
      }
      if (space < 0 || space == rest.length() - 1) {
        break;
      }
      line(rest.substring(0, space + 1), out);
      rest = rest.substring(space + 1);
    }
    line(rest, out);
  }

  private static void line(String line, StringBuilder out) {
    out.append(STUFFED.matcher(line).matches() ? " " : "").append(line).append("\r\n");
  }
}
