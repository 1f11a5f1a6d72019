package limberboard.print.type;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide text is at most, where it is not known in which typeface a drawing will be shown. The
 * figures are the widths of a wide sans-serif typeface, rounded up, from memory; narrower ones,
 * Inter among them, stay below. Stateless.
 */
public final class TextWidth {
  private static final String NARROW = "ijlI'|.,:;! \u00a0";
  private static final String SLIM = "ftr()[]-/“”\"·";
  private static final String WIDE = "mwMWOQ%@→—…&½¼¾";
  private static final String SIGNS = "+<=>~×±^#_";
  private static final double NARROW_EM = 0.4;
  private static final double SLIM_EM = 0.5;
  private static final double WIDE_EM = 1.02;
  private static final double SIGN_EM = 0.86;
  private static final double CAPITAL_EM = 0.8;
  private static final double USUAL_EM = 0.66;
  private static final double FOREIGN_EM = 1.3;
  private static final int FIRST_FOREIGN = 0x250;
  private static final double BOLD = 1.12;

  private TextWidth() {}

  /**
   * The width of a line.
   *
   * @param size of the letters
   * @return in the size's unit
   */
  public static double of(String text, double size, boolean bold) {
    double ems = text.codePoints().mapToDouble(TextWidth::ems).sum();
    return ems * size * (bold ? BOLD : 1);
  }

  private static double ems(int letter) {
    if (NARROW.indexOf(letter) >= 0) {
      return NARROW_EM;
    } else if (SLIM.indexOf(letter) >= 0) {
      return SLIM_EM;
    } else if (WIDE.indexOf(letter) >= 0) {
      return WIDE_EM;
    } else if (SIGNS.indexOf(letter) >= 0) {
      return SIGN_EM;
    } else if (letter >= FIRST_FOREIGN) {
      return FOREIGN_EM;
    }
    return Character.isUpperCase(letter) ? CAPITAL_EM : USUAL_EM;
  }

  /** Breaks text into lines no wider than the room; a word wider than that is broken. */
  public static List<String> wrap(String text, double size, boolean bold, double room) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (of(longer, size, bold) <= room) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (of(line, size, bold) > room && line.codePointCount(0, line.length()) > 1) {
        int end = fitting(line, size, bold, room);
        lines.add(line.substring(0, end));
        line = line.substring(end);
      }
    }
    if (!line.isEmpty() || lines.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  /** How far into a word the room reaches, at least one letter. */
  private static int fitting(String word, double size, boolean bold, double room) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (of(word.substring(0, next), size, bold) > room) {
        break;
      }
      end = next;
    }
    return end;
  }
}
