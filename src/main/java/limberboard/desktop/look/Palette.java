package limberboard.desktop.look;

import java.awt.Color;
import java.util.Locale;
import javax.swing.UIManager;

/**
 * The colours of the theme now in use. Asked anew at every painting, so a change of theme needs no
 * listener. For the event thread only.
 */
public enum Palette {
  /** Behind everything. */
  PAPER("paper"),
  /** Raised above the paper: pages, lists, cards. */
  SHEET("sheet"),
  /** Hairlines. */
  LINE("line"),
  /** Text. */
  INK("ink"),
  /** Text of second rank. */
  QUIET("quiet"),
  /** The one accent: what can be done, what is chosen. */
  ACCENT("accent"),
  /** Text on the accent. */
  ON_ACCENT("onAccent"),
  /** Behind what is chosen. */
  CHOSEN("chosen"),
  /** Edges of cautions; used for nothing else. */
  CAUTION("caution"),
  /** Behind the text of cautions. */
  CAUTION_PAPER("cautionPaper"),
  /** Headings of cautions. */
  CAUTION_INK("cautionInk"),
  /** Behind words that a search has found. */
  MARK("mark");

  private final String key;

  Palette(String name) {
    key = "Limberboard." + name;
  }

  /** The colour in the theme now in use. */
  public Color color() {
    Color color = UIManager.getColor(key);
    return color == null ? UIManager.getColor("Label.foreground") : color;
  }

  /** The colour, let through by this share: 0 clear, 1 solid. */
  public Color clear(double share) {
    Color solid = color();
    return new Color(
        solid.getRed(), solid.getGreen(), solid.getBlue(), (int) Math.round(255 * share));
  }

  /** The colour as CSS writes it: {@code #rrggbb}. */
  public String css() {
    return String.format(Locale.ROOT, "#%06x", color().getRGB() & 0xffffff);
  }
}
