package limberboard.print.type;

import java.util.ArrayList;
import java.util.List;

/** How much room text takes, and where its lines break. */
public interface TextMeasure {
  /** What stands for the rest of a text that has too many lines. */
  String MORE = "…";

  /**
   * The width of a letter.
   *
   * @param letter its code point
   * @param strong whether it is set in the stronger weight
   */
  double width(int letter, boolean strong);

  /** The height of a line. */
  double line();

  /** The width of a text on one line. */
  default double width(String text, boolean strong) {
    return text.codePoints().mapToDouble(letter -> width(letter, strong)).sum();
  }

  /**
   * The lines of a text, broken between words, and inside a word only where it alone is too wide. A
   * text that needs more lines ends with an ellipsis.
   *
   * @param room the width of a line; at least one letter stands on each, however narrow
   * @param most how many lines there may be, at least 1
   */
  default List<String> lines(String text, boolean strong, double room, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip().replaceAll("\\s+", " ");
    while (!rest.isEmpty()) {
      int end = reach(rest, strong, room);
      if (end < rest.length() && lines.size() == most - 1) {
        end = reach(rest, strong, room - width(MORE, strong));
        lines.add(rest.substring(0, end).strip() + MORE);
        break;
      }
      int space = end < rest.length() ? rest.lastIndexOf(' ', end) : end;
      end = space > 0 ? space : end;
      lines.add(rest.substring(0, end));
      rest = rest.substring(end).strip();
    }
    return List.copyOf(lines);
  }

  /** How far into a text the room reaches, at least one letter. */
  private int reach(String text, boolean strong, double room) {
    int end = 0;
    double width = 0;
    while (end < text.length()) {
      width += width(text.codePointAt(end), strong);
      if (width > room && end > 0) {
        return end;
      }
      end = text.offsetByCodePoints(end, 1);
    }
    return end;
  }
}
