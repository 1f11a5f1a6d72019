package limberboard.letters.mail;

import java.util.ArrayList;
import java.util.List;

/** Text that was broken to be put together again: {@code format=flowed}, RFC 3676. */
final class FlowedText {
  private static final String SIGNATURE = "-- ";

  private FlowedText() {}

  /**
   * The text with its paragraphs in one line each; quoted lines begin with their quote signs and a
   * space.
   *
   * @param deleteSpace whether the space at a soft break is taken out ({@code DelSp=yes})
   */
  static String joined(String text, boolean deleteSpace) {
    List<String> lines = new ArrayList<>();
    StringBuilder paragraph = new StringBuilder();
    int depth = -1;
    for (String line : text.split("\r?\n", -1)) {
      int quotes = quotes(line);
      String said = unstuffed(line.substring(quotes));
      boolean isSignature = said.equals(SIGNATURE);
      if (depth >= 0 && (quotes != depth || isSignature)) {
        lines.add(quoted(depth, paragraph));
        paragraph.setLength(0);
        depth = -1;
      }
      if (said.endsWith(" ") && !isSignature) {
        paragraph.append(deleteSpace ? said.substring(0, said.length() - 1) : said);
        depth = quotes;
      } else {
        lines.add(quoted(quotes, paragraph.append(said)));
        paragraph.setLength(0);
        depth = -1;
      }
    }
    if (depth >= 0) {
      lines.add(quoted(depth, paragraph));
    }
    return String.join("\n", lines);
  }

  private static String quoted(int depth, StringBuilder paragraph) {
    return depth == 0 ? paragraph.toString() : ">".repeat(depth) + " " + paragraph;
  }

  private static int quotes(String line) {
    int quotes = 0;
    while (quotes < line.length() && line.charAt(quotes) == '>') {
      quotes++;
    }
    return quotes;
  }

  private static String unstuffed(String line) {
    return line.startsWith(" ") ? line.substring(1) : line;
  }
}
