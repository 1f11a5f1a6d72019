package limberboard.desktop.upkeep.log;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;

/** A log as a table whose cells tell all they hold when pointed at. */
final class LogTable extends JTable {
  private static final int[] WIDTHS = {170, 270, 66, 110, 190};
  private static final int COUNTED = 3;
  private final transient LogRows rows;

  LogTable(LogRows rows) {
    super(rows);
    this.rows = rows;
    setName("upkeep-log-table");
    getAccessibleContext().setAccessibleName("Log, the newest first");
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            if (getSelectedRow() < 0 && getRowCount() > 0) {
              setRowSelectionInterval(0, 0);
            }
          }
        });
    setFillsViewportHeight(true);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    ((DefaultTableCellRenderer) getTableHeader().getDefaultRenderer())
        .setHorizontalAlignment(SwingConstants.LEADING);
    widths();
  }

  /** Gives columns their widths; what was counted takes none while there is nothing counted. */
  void widths() {
    for (int i = 0; i < WIDTHS.length; i++) {
      TableColumn column = getColumnModel().getColumn(i);
      int width = i == COUNTED && !rows.hasCounts() ? 0 : UIScale.scale(WIDTHS[i]);
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
  private static boolean grows(int column) {
    return column == 1 || column == WIDTHS.length - 1;
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
