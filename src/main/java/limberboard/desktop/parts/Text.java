package limberboard.desktop.parts;

import javax.swing.JLabel;
import limberboard.desktop.look.Palette;

/**
 * Text by rank. Sizes follow the theme's text size, and colours the theme, also when they change
 * while the text is on screen.
 */
public final class Text {
  private Text() {}

  /** The one heading of a place or step. */
  public static Wrapped title(String text) {
    return new Wrapped(text, "h2", Palette.INK);
  }

  /** The heading of a region. */
  public static Wrapped heading(String text) {
    return new Wrapped(text, "h3", Palette.INK);
  }

  /** A question in large type. */
  public static Wrapped question(String text) {
    return new Wrapped(text, "h1", Palette.INK);
  }

  /** Text to be read: one size above that of controls. */
  public static Wrapped reading(String text) {
    return new Wrapped(text, "large", Palette.INK);
  }

  /** Ordinary text. */
  public static Wrapped plain(String text) {
    return new Wrapped(text, "", Palette.INK);
  }

  /** The name of an entry in a list. */
  public static Wrapped strong(String text) {
    return new Wrapped(text, "h4", Palette.INK);
  }

  /** The heading of a group in a list. */
  public static Wrapped caption(String text) {
    return new Wrapped(text, "h4", Palette.QUIET);
  }

  /** Text of second rank. */
  public static Wrapped quiet(String text) {
    return new Wrapped(text, "", Palette.QUIET);
  }

  /** The heading of a caution, in the colour kept for cautions. */
  public static Wrapped caution(String text) {
    return new Wrapped(text, "h4", Palette.CAUTION_INK);
  }

  /** A short label that does not wrap. */
  public static JLabel label(String text) {
    return new JLabel(text);
  }

  /** The number of a line to be read. */
  public static JLabel number(int number) {
    JLabel label = new JLabel(number + ".");
    label.putClientProperty("FlatLaf.styleClass", "large");
    return label;
  }
}
