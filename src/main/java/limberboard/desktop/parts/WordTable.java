package limberboard.desktop.parts;

import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;

/** A table of words whose cells wrap; no column is narrower than its head. */
public class WordTable extends JTable {
  private static final int HEAD_ROOM = 4;
  private static final int WIDTH = 10;

  /**
   * An empty table.
   *
   * @param name by which it is found
   * @param what what it is, for somebody who listens to it
   * @param heads the heads of its columns
   * @param shares of the width, one a column
   */
  public WordTable(String name, String what, List<String> heads, List<Integer> shares) {
    super(new Fixed(heads));
    setName(name);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    getTableHeader().setReorderingAllowed(false);
    setDefaultRenderer(Object.class, new WrappingCell());
    getAccessibleContext().setAccessibleName(what);
    for (int i = 0; i < shares.size(); i++) {
      getColumnModel().getColumn(i).setPreferredWidth(shares.get(i) * WIDTH);
    }
    ((DefaultTableCellRenderer) getTableHeader().getDefaultRenderer())
        .setHorizontalAlignment(SwingConstants.LEADING);
  }

  /** Shows these rows, each with a text for every column. */
  public final void rows(List<List<String>> rows) {
    Fixed model = (Fixed) getModel();
    model.setRowCount(0);
    rows.forEach(row -> model.addRow(row.toArray()));
    fitRows();
  }

  /** Columns are never narrower than their heads; rows are as high as their text needs. */
  @Override
  public void doLayout() {
    for (int i = 0; i < getColumnCount(); i++) {
      TableColumn column = getColumnModel().getColumn(i);
      Component head =
          getTableHeader()
              .getDefaultRenderer()
              .getTableCellRendererComponent(this, column.getHeaderValue(), false, false, -1, i);
      column.setMinWidth(head.getPreferredSize().width + HEAD_ROOM);
    }
    super.doLayout();
    fitRows();
  }

  /** Makes every row as high as its highest cell. */
  private void fitRows() {
    for (int row = 0; row < getRowCount(); row++) {
      int height = UIManager.getInt("Table.rowHeight");
      for (int column = 0; column < getColumnCount(); column++) {
        Component cell = prepareRenderer(getCellRenderer(row, column), row, column);
        height = Math.max(height, cell.getPreferredSize().height);
      }
      if (getRowHeight(row) != height) {
        setRowHeight(row, height);
      }
    }
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  private static final class Fixed extends DefaultTableModel {
    Fixed(List<String> heads) {
      super(heads.toArray(), 0);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return false;
    }
  }

  private static final class WrappingCell extends JTextArea implements TableCellRenderer {
    private static final int TALL = 10_000;

    WrappingCell() {
      setLineWrap(true);
      setWrapStyleWord(true);
      setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
    }

    @Override
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean selected, boolean focused, int row, int column) {
      setText(String.valueOf(value).replace(" %", "\u00a0%"));
      setFont(table.getFont());
      setForeground(selected ? table.getSelectionForeground() : table.getForeground());
      setBackground(selected ? table.getSelectionBackground() : table.getBackground());
      int width = table.getColumnModel().getColumn(column).getWidth();
      setSize(width, TALL);
      getAccessibleContext().setAccessibleName(getText());
      return this;
    }

    @Override
    public void updateUI() {
      super.updateUI();
      setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
    }
  }
}
