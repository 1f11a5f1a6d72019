package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;

/**
 * Something to read with buttons right below it. When there is too much to read, it scrolls and the
 * buttons stay in sight; where they would then take most of the room, all of it scrolls together.
 */
public class Docked extends JPanel {
  private static final double LEAST_TO_READ = 0.6;
  private final int gap;
  private final Column content;
  private Column body = new Column(0);
  private Column buttons = new Column(0);
  private boolean together;

  /**
   * An empty panel.
   *
   * @param gap between text and buttons, in pixels
   */
  protected Docked(int gap) {
    super(new Below());
    this.gap = gap;
    this.content = new Column(gap);
    setOpaque(false);
  }

  /**
   * Fills the panel; called once.
   *
   * @param read what is read
   * @param pressed what is pressed
   */
  protected final void dock(Column read, Column pressed) {
    body = read;
    buttons = pressed;
    content.add(body);
    add(content.scrolling());
    add(buttons);
  }

  /** Whether the buttons would leave less than a readable share of the room. */
  private boolean isCramped() {
    int width = Math.max(1, getWidth());
    int foot = Widths.heightAt(buttons, width) + gap;
    return Widths.heightAt(body, width) + foot > getHeight()
        && getHeight() - foot < LEAST_TO_READ * getHeight();
  }

  @Override
  public void doLayout() {
    super.doLayout();
    if (getHeight() > 0 && isCramped() != together) {
      SwingUtilities.invokeLater(this::rearrange);
    }
  }

  /** Moves the buttons into what scrolls, or out of it; one that has the focus keeps it. */
  private void rearrange() {
    boolean wanted = isCramped();
    if (wanted == together) {
      return;
    }
    together = wanted;
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    (together ? content : this).add(buttons);
    if (owner != null && SwingUtilities.isDescendingFrom(owner, buttons)) {
      owner.requestFocusInWindow();
    }
    revalidate();
    repaint();
  }

  /** The first component as high as it wants and has room for, the second one below it. */
  private static final class Below extends InOrderLayout {
    @Override
    public void layoutContainer(Container parent) {
      if (parent.getComponentCount() == 0) {
        return;
      }
      int gap = ((Docked) parent).gap;
      Insets insets = parent.getInsets();
      int width = Math.max(1, parent.getWidth() - insets.left - insets.right);
      int room = parent.getHeight() - insets.top - insets.bottom;
      JScrollPane scroller = (JScrollPane) parent.getComponent(0);
      int foot =
          parent.getComponentCount() < 2
              ? 0
              : gap + Widths.heightAt((Container) parent.getComponent(1), width);
      Column view = ((Docked) parent).content;
      int wanted = Widths.contentHeightAt(view, width);
      if (wanted > room - foot) {
        Widths.contentHeightAt(view, width - scroller.getVerticalScrollBar().getWidth());
      }
      int body = Math.max(1, Math.min(wanted, room - foot));
      scroller.setBounds(insets.left, insets.top, width, body);
      if (foot > 0) {
        parent.getComponent(1).setBounds(insets.left, insets.top + body + gap, width, foot - gap);
      }
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
      return new Dimension(400, 300);
    }
  }
}
