package limberboard.desktop.write.symptom;

import java.awt.BorderLayout;
import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.When;
import limberboard.writing.symptom.SymptomTable;

/**
 * The table on screen: its causes and their weights stay in sight at the left, its checks above.
 * One cell is selected. It takes the focus as a whole.
 */
final class TableView extends JPanel {
  private static final int STEP = 40;
  private final transient TablePart body = new TablePart(this, false, false);
  private final transient TablePart beside = new TablePart(this, false, true);
  private final transient TablePart above = new TablePart(this, true, false);
  private final transient TablePart corner = new TablePart(this, true, true);
  private final JScrollPane scroller = new JScrollPane(body);
  private transient Optional<TableGrid> grid = Optional.empty();
  private transient TableMetrics metrics;
  private TablePlace selected = new TablePlace(0, 0);
  private transient Runnable moved = () -> {};
  private transient Consumer<TableCell> opened = cell -> {};

  TableView() {
    super(new BorderLayout());
    setName("symptom-table");
    setFocusable(true);
    setOpaque(false);
    setBorder(BorderFactory.createLineBorder(Palette.LINE.color()));
    scroller.setBorder(BorderFactory.createEmptyBorder());
    scroller.getVerticalScrollBar().setUnitIncrement(STEP);
    scroller.getHorizontalScrollBar().setUnitIncrement(STEP);
    scroller.setFocusable(false);
    add(scroller);
    addFocusListener(new Ring());
    When.widened(this, this::measure);
  }

  /** Calls these when another cell is selected, and when one is opened by the mouse. */
  void on(Runnable move, Consumer<TableCell> open) {
    moved = move;
    opened = open;
  }

  TableGrid grid() {
    return grid.orElseThrow();
  }

  boolean hasGrid() {
    return grid.isPresent();
  }

  TableMetrics metrics() {
    return metrics;
  }

  boolean isFocused() {
    return isFocusOwner();
  }

  boolean isSelected(int row, int column) {
    return selected.row() == row
        && grid().first(row, column) == grid().first(selected.row(), selected.column());
  }

  TablePlace selected() {
    return selected;
  }

  /** The selected cell. */
  TableCell cell() {
    return grid().at(selected.row(), selected.column());
  }

  /** Shows a table; the selected place stays, or the nearest that there is. */
  void show(SymptomTable table) {
    boolean first = grid.isEmpty();
    if (!first && grid().table() == table) {
      return;
    }
    grid = Optional.of(new TableGrid(table));
    selected =
        first ? new TablePlace(TableGrid.HEAD_ROWS, 0).within(grid()) : selected.within(grid());
    measure();
    if (first) {
      scroller.setColumnHeaderView(above);
      scroller.setRowHeaderView(beside);
      scroller.setCorner(JScrollPane.UPPER_LEFT_CORNER, corner);
    }
  }

  private void measure() {
    if (grid.isPresent()) {
      FontMetrics fonts = getFontMetrics(UIManager.getFont("Label.font"));
      metrics = new TableMetrics(grid(), fonts, Math.max(getWidth(), 600));
      for (JComponent part : new JComponent[] {body, beside, above, corner}) {
        part.revalidate();
        part.repaint();
      }
    }
  }

  /** Selects a place and brings it into sight. */
  void select(TablePlace place) {
    selected = place;
    reveal();
    body.repaint();
    beside.repaint();
    above.repaint();
    corner.repaint();
    moved.run();
  }

  void point(TablePlace place, boolean open) {
    select(place);
    requestFocusInWindow();
    if (open) {
      opened.accept(cell());
    }
  }

  private void reveal() {
    int row = selected.row();
    int column = selected.column();
    Rectangle box =
        body.box(Math.max(row, TableGrid.HEAD_ROWS), Math.max(column, TableGrid.STILL_COLUMNS));
    Rectangle cell = above.box(row, column);
    Rectangle view = scroller.getViewport().getViewRect();
    if (row < TableGrid.HEAD_ROWS) {
      int width = Math.min(cell.width, view.width);
      box = new Rectangle(cell.x, view.y, width, 1);
    }
    if (column < TableGrid.STILL_COLUMNS) {
      box = new Rectangle(view.x, box.y, 1, box.height);
    }
    if (column >= TableGrid.STILL_COLUMNS || row >= TableGrid.HEAD_ROWS) {
      body.scrollRectToVisible(box);
    }
  }

  /** Says what is selected to somebody who listens. */
  void speak(String words) {
    getAccessibleContext().setAccessibleDescription(words);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJPanel() {
            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.TABLE;
            }
          };
      accessibleContext.setAccessibleName("Causes and checks");
    }
    return accessibleContext;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (scroller != null) {
      setBorder(BorderFactory.createLineBorder(Palette.LINE.color()));
      measure();
    }
  }

  private final class Ring implements FocusListener {
    @Override
    public void focusGained(FocusEvent e) {
      repaint();
    }

    @Override
    public void focusLost(FocusEvent e) {
      repaint();
    }
  }
}
