package limberboard.desktop.parts;

import java.awt.Dimension;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;

/** A column that is as high as it wants to be up to a limit, and scrolls from there on. */
public final class LimitedHeight extends JScrollPane {
  private final transient Column column;
  private final transient IntSupplier most;

  /**
   * A column with a limit.
   *
   * @param column what is shown
   * @param most how high it may be, in pixels; asked each time it is laid out
   */
  public LimitedHeight(Column column, IntSupplier most) {
    super(column, VERTICAL_SCROLLBAR_AS_NEEDED, HORIZONTAL_SCROLLBAR_NEVER);
    this.column = column;
    this.most = most;
    setBorder(BorderFactory.createEmptyBorder());
    setOpaque(false);
    getViewport().setOpaque(false);
  }

  @Override
  public Dimension getPreferredSize() {
    int width = Math.max(1, getWidth());
    int wanted = column.isVisible() ? Widths.contentHeightAt(column, width) : 0;
    return new Dimension(width, Math.min(wanted, Math.max(1, most.getAsInt())));
  }
}
