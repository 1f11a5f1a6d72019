package limberboard.print.type;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Text in a font and a stronger one, at their size. Safe for use by several threads. */
public final class FontMeasure implements TextMeasure {
  private static final FontRenderContext SCALABLE = new FontRenderContext(null, true, true);
  private final Font plain;
  private final Font strong;
  private final Map<Integer, Double> widths = new ConcurrentHashMap<>();
  private final Map<Integer, Double> strongWidths = new ConcurrentHashMap<>();

  /** Text in these fonts. */
  public FontMeasure(Font plain, Font strong) {
    this.plain = plain;
    this.strong = strong;
  }

  /** Inter and its bold, in letters of so many units. */
  public static FontMeasure inter(int size) {
    InterFonts.registerForPainting();
    return new FontMeasure(new Font("Inter", Font.PLAIN, size), new Font("Inter", Font.BOLD, size));
  }

  /** The font of a weight. */
  public Font font(boolean heavy) {
    return heavy ? strong : plain;
  }

  /** From the upper edge of a line to the foot of its letters. */
  public double ascent() {
    return plain.getLineMetrics("Ag", SCALABLE).getAscent();
  }

  @Override
  public double width(int letter, boolean heavy) {
    return (heavy ? strongWidths : widths)
        .computeIfAbsent(
            letter,
            key -> font(heavy).getStringBounds(Character.toString(key), SCALABLE).getWidth());
  }

  @Override
  public double line() {
    return Math.ceil(plain.getLineMetrics("Ag", SCALABLE).getHeight());
  }
}
