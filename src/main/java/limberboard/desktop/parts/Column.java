package limberboard.desktop.parts;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;

/** A stack of components as wide as itself; in a scroll pane it scrolls only up and down. */
public class Column extends JPanel implements Scrollable {
  private static final int LINE = 24;

  /**
   * An empty column.
   *
   * @param gap between components, in pixels
   */
  public Column(int gap) {
    super(new ColumnLayout(gap));
    setOpaque(false);
  }

  /** The column with a margin on all sides, in pixels. */
  public final Column padded(int top, int left, int bottom, int right) {
    setBorder(BorderFactory.createEmptyBorder(top, left, bottom, right));
    return this;
  }

  /** Keeps its content to a readable width, in pixels of the usual text size, at the left. */
  public final Column atMost(int width) {
    ((ColumnLayout) getLayout()).atMost(width);
    return this;
  }

  /** This column in a scroll pane without a frame of its own. */
  public final JScrollPane scrolling() {
    return Scrolling.of(this);
  }

  /** Always computed, because it depends on the width that is about to be given. */
  @Override
  public Dimension getPreferredSize() {
    return isPreferredSizeSet() ? super.getPreferredSize() : getLayout().preferredLayoutSize(this);
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return LINE;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return orientation == SwingConstants.VERTICAL
        ? Math.max(LINE, visible.height - LINE)
        : visible.width;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
