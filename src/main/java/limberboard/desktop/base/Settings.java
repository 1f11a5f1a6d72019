package limberboard.desktop.base;

import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;

/** How a person wants to see things; remembered. For the event thread only. */
public final class Settings extends Observed {
  private static final int USUAL = 100;
  private static final int LARGEST = 200;
  private final Memory memory;
  private ThemeChoice theme;
  private int textPercent;
  private boolean imperial;
  private boolean projected;

  /** The settings of last time. */
  public Settings(Memory memory) {
    this.memory = memory;
    theme = memory.choice("theme", ThemeChoice.LIGHT);
    textPercent = memory.number("text-percent", USUAL, LARGEST, USUAL);
    imperial = memory.number("imperial", 0, 1, 0) == 1;
  }

  /** The theme. */
  public ThemeChoice theme() {
    return theme;
  }

  /** Text size in per cent of the usual, 100 to 200; while projected the largest. */
  public int textPercent() {
    return projected ? LARGEST : textPercent;
  }

  /** Whether everything is shown as large as can be, for those who sit far away. */
  public boolean projected() {
    return projected;
  }

  /** Shows everything as large as can be for a while, or as before; not remembered. */
  public void projected(boolean large) {
    if (large != projected) {
      projected = large;
      tell();
    }
  }

  /** Whether imperial units are shown beside the metric ones. */
  public boolean imperial() {
    return imperial;
  }

  /** Changes the theme. */
  public void theme(ThemeChoice choice) {
    theme = choice;
    memory.remember("theme", choice.name());
    tell();
  }

  /** Changes the text size. */
  public void textPercent(int percent) {
    projected = false;
    textPercent = Math.max(USUAL, Math.min(LARGEST, percent));
    memory.remember("text-percent", Integer.toString(textPercent));
    tell();
  }

  /** Makes text larger (1) or smaller (-1) by one step of those on offer. */
  public void stepText(int by) {
    int at = 0;
    for (int i = 0; i < Theme.TEXT_SIZES.size(); i++) {
      if (Theme.TEXT_SIZES.get(i) <= textPercent) {
        at = i;
      }
    }
    textPercent(Theme.TEXT_SIZES.get(Math.max(0, Math.min(Theme.TEXT_SIZES.size() - 1, at + by))));
  }

  /** Changes whether imperial units are shown beside the metric ones. */
  public void imperial(boolean beside) {
    imperial = beside;
    memory.remember("imperial", beside ? "1" : "0");
    tell();
  }
}
