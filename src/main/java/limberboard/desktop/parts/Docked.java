package limberboard.desktop.parts;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/**
 * Something to read with buttons right below it. When there is too much to read, it scrolls and the
 * buttons stay in sight.
 */
public class Docked extends JPanel {

  /**
   * An empty panel.
   *
   * @param gap between text and buttons, in pixels
   */
  protected Docked(int gap) {
    super(new Below(gap));
    setOpaque(false);
  }

  /**
   * Fills the panel; called once.
   *
   * @param body what is read
   * @param buttons what is pressed
   */
  protected final void dock(Column body, Column buttons) {
    add(body.scrolling());
    add(buttons);
  }

  /** The first component as high as it wants and has room for, the second one below it. */
  private static final class Below extends InOrderLayout {
    private final int gap;

    Below(int gap) {
      this.gap = gap;
    }

    @Override
    public void layoutContainer(Container parent) {
      if (parent.getComponentCount() < 2) {
        return;
      }
      Insets insets = parent.getInsets();
      int width = Math.max(1, parent.getWidth() - insets.left - insets.right);
      int room = parent.getHeight() - insets.top - insets.bottom;
      JScrollPane scroller = (JScrollPane) parent.getComponent(0);
      Container buttons = (Container) parent.getComponent(1);
      int foot = Widths.heightAt(buttons, width);
      int wanted = Widths.heightAt(scroller.getViewport().getView(), width);
      int body = Math.max(1, Math.min(wanted, room - foot - gap));
      scroller.setBounds(insets.left, insets.top, width, body);
      buttons.setBounds(insets.left, insets.top + body + gap, width, foot);
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
      return new Dimension(400, 300);
    }
  }
}
