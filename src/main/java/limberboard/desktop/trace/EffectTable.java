package limberboard.desktop.trace;

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
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/** What each answer would do, one row an answer; text in cells wraps. */
final class EffectTable extends JTable {
  private static final List<String> HEADS =
      List.of("Answer", "Chance", "Likeliest cause then", "What comes next", "From there");
  private static final int HEAD_ROOM = 4;
  private static final int[] SHARES = {18, 10, 30, 30, 12};

  EffectTable() {
    super(new Fixed());
    setName("effects");
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    getTableHeader().setReorderingAllowed(false);
    setDefaultRenderer(Object.class, new WrappingCell());
    getAccessibleContext().setAccessibleName("What each answer would do");
    for (int i = 0; i < SHARES.length; i++) {
      getColumnModel().getColumn(i).setPreferredWidth(SHARES[i] * 10);
    }
    ((DefaultTableCellRenderer) getTableHeader().getDefaultRenderer())
        .setHorizontalAlignment(SwingConstants.LEADING);
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

  /** Shows the effects of a step of this kind. */
  void show(String kind, List<Effect> effects) {
    String head = kind.equals("mend") ? "Outcome" : HEADS.get(0);
    getColumnModel().getColumn(0).setHeaderValue(head);
    getTableHeader().repaint();
    Fixed rows = (Fixed) getModel();
    rows.setRowCount(0);
    for (Effect effect : effects) {
      rows.addRow(
          new Object[] {
            effect.found(),
            PerCent.words(effect.chance()),
            effect
                .leading()
                .map(ranked -> ranked.cause().title() + ", " + PerCent.words(ranked.chance()))
                .orElse("The fault is mended"),
            effect
                .next()
                .map(next -> Sentences.capital(next.kind()) + ": " + next.text())
                .orElse(""),
            effect.next().map(next -> Minutes.words(effect.minutes())).orElse("")
          });
    }
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
    Fixed() {
      super(HEADS.toArray(), 0);
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
