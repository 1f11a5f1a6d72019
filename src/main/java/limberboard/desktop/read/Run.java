package limberboard.desktop.read;

import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import java.awt.font.FontRenderContext;

/**
 * A stretch of text that stands on one line in one style.
 *
 * @param start where it begins in the text of the page
 * @param text its letters, as painted
 * @param box where it is painted, in pixels of the page
 * @param baseline where its letters stand, in pixels of the page
 * @param font what it is painted in
 * @param ink its colour
 * @param strong whether it is strongly stressed
 * @param stressed whether it is stressed
 */
record Run(
    int start,
    String text,
    Rectangle box,
    int baseline,
    Font font,
    Color ink,
    boolean strong,
    boolean stressed) {
  private static final FontRenderContext AS_PAINTED = new FontRenderContext(null, true, true);

  Run {
    box = new Rectangle(box);
  }

  /** After its last letter, in the text of the page. */
  int end() {
    return start + text.length();
  }

  /** Where a letter begins, in pixels; the end of the run for what lies after it. */
  int x(int offset) {
    int letters = Math.max(0, Math.min(text.length(), offset - start));
    double whole = width(text.length());
    double share = whole <= 0 ? 0 : width(letters) / whole;
    return box.x + (int) Math.round(share * box.width);
  }

  /** Between which letters a place of the line lies. */
  int offsetAt(int x) {
    int best = start;
    for (int offset = start; offset <= end(); offset++) {
      if (Math.abs(x(offset) - x) <= Math.abs(x(best) - x)) {
        best = offset;
      }
    }
    return best;
  }

  /** The part of its box between two places of the text. */
  Rectangle between(int from, int to) {
    int left = x(from);
    return new Rectangle(left, box.y, x(to) - left, box.height);
  }

  private double width(int letters) {
    return font.getStringBounds(text, 0, letters, AS_PAINTED).getWidth();
  }
}
