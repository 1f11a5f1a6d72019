package limberboard.desktop.look;

import com.formdev.flatlaf.FlatLaf;

/** The themes there are. */
public enum ThemeChoice {
  /** Off-white paper; readable in sunlight. */
  LIGHT("Light"),
  /** Night water; spares the eyes below deck after dark. */
  DARK("Dark");

  private final String title;

  ThemeChoice(String title) {
    this.title = title;
  }

  /** What a person reads. */
  public String title() {
    return title;
  }

  /** A new look and feel of this theme. */
  public FlatLaf lookAndFeel() {
    return this == LIGHT ? new LightPaper() : new DarkWater();
  }
}
