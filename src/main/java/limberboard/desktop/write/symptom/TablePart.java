package limberboard.desktop.write.symptom;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import limberboard.desktop.look.Palette;

/**
 * A part of the table: what scrolls, or what stays in sight above it or beside it. Only what is in
 * sight is painted.
 */
final class TablePart extends JComponent {
  private final transient TableView view;
  private final boolean head;
  private final boolean still;

  /**
   * A part.
   *
   * @param view the table
   * @param head whether it has the rows above the causes, or those of the causes
   * @param still whether it has the columns that stay in sight, or the others
   */
  TablePart(TableView view, boolean head, boolean still) {
    this.view = view;
    this.head = head;
    this.still = still;
    setOpaque(true);
    addMouseListener(new Pointing());
  }

  private int firstRow() {
    return head ? 0 : TableGrid.HEAD_ROWS;
  }

  private int behindRows() {
    return head ? TableGrid.HEAD_ROWS : view.grid().rows();
  }

  private int firstColumn() {
    return still ? 0 : TableGrid.STILL_COLUMNS;
  }

  private int behindColumns() {
    return still ? TableGrid.STILL_COLUMNS : view.grid().columns();
  }

  @Override
  public Dimension getPreferredSize() {
    if (!view.hasGrid()) {
      return new Dimension();
    }
    TableMetrics metrics = view.metrics();
    return new Dimension(
        metrics.x(behindColumns()) - metrics.x(firstColumn()),
        metrics.y(behindRows()) - metrics.y(firstRow()));
  }

  /** Where a cell lies in this part; empty, 0 by 0, when it lies in another one. */
  Rectangle box(int row, int column) {
    TableGrid grid = view.grid();
    boolean mine =
        row >= firstRow()
            && row < behindRows()
            && column >= firstColumn()
            && column < behindColumns();
    if (!mine) {
      return new Rectangle();
    }
    TableMetrics metrics = view.metrics();
    int from = Math.max(firstColumn(), grid.first(row, column));
    int behind = Math.min(behindColumns(), grid.behind(row, column));
    return new Rectangle(
        metrics.x(from) - metrics.x(firstColumn()),
        metrics.y(row) - metrics.y(firstRow()),
        metrics.x(behind) - metrics.x(from),
        metrics.y(row + 1) - metrics.y(row));
  }

  @Override
  protected void paintComponent(Graphics g) {
    if (!view.hasGrid()) {
      return;
    }
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g2.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    Rectangle clip = g2.getClipBounds();
    g2.setColor(Palette.PAPER.color());
    g2.fill(clip);
    TableMetrics metrics = view.metrics();
    Font plain = UIManager.getFont("Label.font");
    Font strong = UIManager.getFont("h4.font");
    CellPainter painter =
        new CellPainter(
            new CellWords(view.grid().table()), plain, strong.deriveFont(plain.getSize2D()));
    int left = metrics.x(firstColumn());
    int top = metrics.y(firstRow());
    int lastRow = Math.min(behindRows() - 1, metrics.row(top + clip.y + clip.height));
    int lastColumn = Math.min(behindColumns() - 1, metrics.column(left + clip.x + clip.width));
    for (int row = Math.max(firstRow(), metrics.row(top + clip.y)); row <= lastRow; row++) {
      int column = Math.max(firstColumn(), metrics.column(left + clip.x));
      while (column <= lastColumn) {
        Rectangle box = box(row, column);
        boolean selected = view.isSelected(row, column);
        painter.paint(g2, view.grid().at(row, column), box, selected, view.isFocused());
        column = Math.max(column + 1, view.grid().behind(row, column));
      }
    }
    g2.dispose();
  }

  private final class Pointing extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent e) {
      if (SwingUtilities.isLeftMouseButton(e)) {
        TableMetrics metrics = view.metrics();
        int row = metrics.row(metrics.y(firstRow()) + e.getY());
        int column = metrics.column(metrics.x(firstColumn()) + e.getX());
        boolean inside = row < behindRows() && column < behindColumns();
        if (inside && view.grid().isOpen(row, column)) {
          view.point(new TablePlace(row, view.grid().first(row, column)), e.getClickCount() > 1);
        }
      }
    }
  }
}
