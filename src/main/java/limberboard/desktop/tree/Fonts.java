package limberboard.desktop.tree;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.HashMap;
import java.util.Map;
import javax.swing.UIManager;

/** The two weights that a tree is set in, and how much room they take. */
final class Fonts implements Measure {
  private static final FontRenderContext SCALABLE = new FontRenderContext(null, true, true);
  private final Font plain;
  private final Font strong;
  private final Map<String, Double> widths = new HashMap<>();
  private final Map<String, Double> strongWidths = new HashMap<>();

  private Fonts(Font plain, Font strong) {
    this.plain = plain;
    this.strong = strong;
  }

  /** The fonts of the theme now in use. */
  static Fonts ofTheme() {
    Font plain = UIManager.getFont("Label.font");
    Font semibold = UIManager.getFont("h4.font");
    Font strong = semibold == null ? plain.deriveFont(Font.BOLD) : semibold;
    return new Fonts(plain, strong.deriveFont(plain.getSize2D()));
  }

  Font font(boolean heavy) {
    return heavy ? strong : plain;
  }

  double ascent() {
    return plain.getLineMetrics("Ag", SCALABLE).getAscent();
  }

  @Override
  public double width(String text, boolean heavy) {
    return (heavy ? strongWidths : widths)
        .computeIfAbsent(text, key -> font(heavy).getStringBounds(key, SCALABLE).getWidth());
  }

  @Override
  public double line() {
    return Math.ceil(plain.getLineMetrics("Ag", SCALABLE).getHeight());
  }
}
