package limberboard.desktop.tree;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
final class Lines {
  private static final String MORE = "…";
  private final Measure measure;
  private final boolean strong;

  /**
   * For text of one weight.
   *
   * @param measure how wide text is
   * @param strong whether it is set in the stronger weight
   */
  Lines(Measure measure, boolean strong) {
    this.measure = measure;
    this.strong = strong;
  }

  /**
   * The lines of a text, broken between words, and inside a word only where it alone is too wide. A
   * text that needs more lines ends with an ellipsis.
   *
   * @param text the text
   * @param width of a line
   * @param most how many lines there may be, at least 1
   */
  List<String> of(String text, double width, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty() && lines.size() < most) {
      int end = fitting(rest, width);
      if (end < rest.length() && lines.size() == most - 1) {
        lines.add(shortened(rest, width));
        return List.copyOf(lines);
      }
      lines.add(rest.substring(0, end).strip());
      rest = rest.substring(end).strip();
    }
    return List.copyOf(lines);
  }

  /** How many characters go on a line: whole words, or at least one character. */
  private int fitting(String text, double width) {
    if (fits(text, width)) {
      return text.length();
    }
    int end = 0;
    for (int space = text.indexOf(' '); space >= 0; space = text.indexOf(' ', space + 1)) {
      if (!fits(text.substring(0, space), width)) {
        break;
      }
      end = space;
    }
    return end > 0 ? end : charactersFitting(text, width);
  }

  private int charactersFitting(String text, double width) {
    int end = 1;
    while (end < text.length() && fits(text.substring(0, end + 1), width)) {
      end++;
    }
    return end;
  }

  private String shortened(String text, double width) {
    int end = charactersFitting(text + MORE, width);
    while (end > 1 && !fits(text.substring(0, end).strip() + MORE, width)) {
      end--;
    }
    return text.substring(0, Math.min(end, text.length())).strip() + MORE;
  }

  private boolean fits(String text, double width) {
    return measure.width(text, strong) <= width;
  }
}
