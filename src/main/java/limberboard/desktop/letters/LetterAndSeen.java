package limberboard.desktop.letters;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.When;

/**
 * The letter, and below it what was recognised in it, each with a scroll bar of its own; where
 * there is little height they scroll together, so that neither is squeezed to two lines.
 */
final class LetterAndSeen extends JPanel {
  private static final int LEAST_HEIGHT = 520;
  private static final double USUAL = 0.52;
  private final Column letter;
  private final Column seen;
  private final transient Divider.Memory memory;
  private boolean low;

  LetterAndSeen(Column letter, Column seen, Divider.Memory memory) {
    super(new BorderLayout());
    this.letter = letter;
    this.seen = seen;
    this.memory = memory;
    setOpaque(false);
    arrange(false);
    When.resized(this, this::look);
  }

  private void look() {
    boolean wanted = getHeight() < UIScale.scale(LEAST_HEIGHT);
    if (getHeight() > 0 && wanted != low) {
      arrange(wanted);
    }
  }

  private void arrange(boolean together) {
    low = together;
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean within = owner != null && SwingUtilities.isDescendingFrom(owner, this);
    removeAll();
    if (together) {
      Column all = new Column(4);
      all.add(letter);
      all.add(seen);
      add(all.scrolling());
    } else {
      JScrollPane above = letter.scrolling();
      JScrollPane below = seen.scrolling();
      add(Divider.below("letters-about", above, below, USUAL, memory));
    }
    if (within) {
      Later.focus(owner);
    }
    revalidate();
    repaint();
  }

  /** Scrolls to the beginning of the letter. */
  static void toTop(JComponent letter) {
    letter.scrollRectToVisible(new java.awt.Rectangle(0, 0, 1, 1));
  }
}
