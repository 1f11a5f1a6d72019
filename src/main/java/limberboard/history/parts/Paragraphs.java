package limberboard.history.parts;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts Markdown into pieces that people change by themselves: headings, paragraphs, the items of a
 * list, the rows of a table, fenced text as a whole, and the blank lines between them.
 */
final class Paragraphs {
  private final List<String> pieces = new ArrayList<>();
  private final StringBuilder open = new StringBuilder();
  private String fence = "";

  private Paragraphs() {}

  /** The pieces; joined they are the text. */
  static List<String> of(String text) {
    Paragraphs paragraphs = new Paragraphs();
    WholeLines.of(text).forEach(paragraphs::line);
    paragraphs.close();
    return List.copyOf(paragraphs.pieces);
  }

  private void line(String line) {
    String plain = line.strip();
    if (!fence.isEmpty()) {
      open.append(line);
      if (plain.startsWith(fence) && plain.replace(fence.substring(0, 1), "").isEmpty()) {
        fence = "";
        close();
      }
    } else if (plain.startsWith("```") || plain.startsWith("~~~")) {
      close();
      fence = plain.substring(0, length(plain));
      open.append(line);
    } else if (plain.isEmpty()) {
      close();
      pieces.add(line);
    } else {
      if (begins(line)) {
        close();
      }
      open.append(line);
      if (isHeading(line)) {
        close();
      }
    }
  }

  private static int length(String fence) {
    int length = 0;
    while (length < fence.length() && fence.charAt(length) == fence.charAt(0)) {
      length++;
    }
    return length;
  }

  private static boolean begins(String line) {
    return isHeading(line) || line.startsWith("|") || line.matches("(?s)([-*+]|[0-9]{1,9}[.)]) .*");
  }

  /** Whether a line is a heading. */
  static boolean isHeading(String line) {
    return line.matches("(?s)#{1,6}([ \t].*|\\s*)");
  }

  private void close() {
    if (!open.isEmpty()) {
      pieces.add(open.toString());
      open.setLength(0);
    }
  }
}
