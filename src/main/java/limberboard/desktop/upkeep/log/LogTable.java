package limberboard.desktop.upkeep.log;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import limberboard.desktop.parts.When;

/** A log as a table whose cells tell all they hold when pointed at. */
public final class LogTable extends JTable {
  private static final int COUNTED = 3;
  private final transient LogRows rows;
  private final int[] widths;

  /**
   * An empty table.
   *
   * @param name its name, for tests
   * @param widths widths of its five columns, in pixels at a scale of one
   */
  public LogTable(String name, int... widths) {
    super(new LogRows());
    this.rows = (LogRows) getModel();
    this.widths = widths.clone();
    setName(name);
    getAccessibleContext().setAccessibleName("Log, the newest first");
    When.focused(
        this,
        () -> {
          if (getSelectedRow() < 0 && getRowCount() > 0) {
            setRowSelectionInterval(0, 0);
          }
        });
    setFillsViewportHeight(true);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    ((DefaultTableCellRenderer) getTableHeader().getDefaultRenderer())
        .setHorizontalAlignment(SwingConstants.LEADING);
    widths();
  }

  /** Shows other lines; the row that was selected stays so where they are other ones. */
  public void show(List<LogRow> shown) {
    int row = getSelectedRow();
    if (rows.show(shown) && !shown.isEmpty() && row >= 0) {
      int same = Math.min(row, shown.size() - 1);
      setRowSelectionInterval(same, same);
    }
    widths();
  }

  /** What is shown. */
  LogRows rows() {
    return rows;
  }

  /** Gives columns their widths; what was counted takes none while there is nothing counted. */
  private void widths() {
    for (int i = 0; i < widths.length; i++) {
      TableColumn column = getColumnModel().getColumn(i);
      int width = i == COUNTED && !rows.hasCounts() ? 0 : UIScale.scale(widths[i]);
      column.setMinWidth(0);
      column.setMaxWidth(grows(i) ? Integer.MAX_VALUE : width);
      column.setPreferredWidth(width);
    }
  }

  /** Columns follow the text size. */
  @Override
  public void updateUI() {
    super.updateUI();
    if (rows != null) {
      widths();
    }
  }

  /** Whether more room than it needs is of use to a column. */
  private boolean grows(int column) {
    return column == 1 || column == widths.length - 1;
  }

  /** Columns keep their widths where there is too little room for them, and scroll sideways. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() == null || getPreferredSize().width <= getParent().getWidth();
  }

  @Override
  public String getToolTipText(MouseEvent e) {
    int row = rowAtPoint(e.getPoint());
    int column = columnAtPoint(e.getPoint());
    String words = row < 0 || column < 0 ? "" : String.valueOf(getValueAt(row, column));
    return words.isEmpty() ? null : words;
  }
}
