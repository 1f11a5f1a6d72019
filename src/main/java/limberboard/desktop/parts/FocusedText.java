package limberboard.desktop.parts;

import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.border.Border;
import limberboard.desktop.look.Palette;

/**
 * A heading that takes the focus in place of a button: a line at its left shows it, Space and the
 * page keys move what it stands on, and Enter does nothing.
 */
public final class FocusedText {
  private static final int MARK = 3;
  private static final int GAP = 8;
  private static final int LINE = 24;
  private static final Border UNMARKED = BorderFactory.createEmptyBorder(0, MARK + GAP, 0, 0);
  private final Wrapped text;
  private final JComponent sheet;

  /**
   * Makes a text take the focus.
   *
   * @param text the heading
   * @param sheet what it stands on, in a scroll pane
   */
  public FocusedText(Wrapped text, JComponent sheet) {
    this.text = text;
    this.sheet = sheet;
    text.setFocusable(true);
    text.setBorder(UNMARKED);
    text.addFocusListener(new FocusLine(text));
    Keys.focused(text, "SPACE", () -> move(1));
    Keys.focused(text, "PAGE_DOWN", () -> move(1));
    Keys.focused(text, "shift SPACE", () -> move(-1));
    Keys.focused(text, "PAGE_UP", () -> move(-1));
    Keys.focused(text, "ENTER", () -> {});
  }

  /** Gives it a name by which it is found. */
  public FocusedText named(String name) {
    text.setName(name);
    return this;
  }

  private void move(int by) {
    Container around = SwingUtilities.getAncestorOfClass(JViewport.class, sheet);
    if (around instanceof JViewport port && port.getView() instanceof JComponent content) {
      Rectangle seen = port.getViewRect();
      int to = Math.max(0, seen.y + by * Math.max(LINE, seen.height - LINE));
      content.scrollRectToVisible(new Rectangle(0, to, 1, seen.height));
    }
  }

  /** Shows by a line at its left that the text has the focus. */
  private record FocusLine(JComponent text) implements FocusListener {
    @Override
    public void focusGained(FocusEvent e) {
      text.setBorder(
          BorderFactory.createCompoundBorder(
              BorderFactory.createMatteBorder(0, MARK, 0, 0, Palette.ACCENT.color()),
              BorderFactory.createEmptyBorder(0, GAP, 0, 0)));
    }

    @Override
    public void focusLost(FocusEvent e) {
      text.setBorder(UNMARKED);
    }
  }
}
