package limberboard.print.markdown;

import java.util.ArrayList;
import java.util.List;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.node.Node;

/** Reads a table. Immutable. */
final class TableReader {
  private final InlineReader inlines;

  TableReader(InlineReader inlines) {
    this.inlines = inlines;
  }

  Block.Table table(TableBlock table, int depth) {
    List<Side> columns = new ArrayList<>();
    List<List<Inline>> head = new ArrayList<>();
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Node section = table.getFirstChild(); section != null; section = section.getNext()) {
      for (Node row = section.getFirstChild(); row != null; row = row.getNext()) {
        if (section instanceof TableHead) {
          columns.addAll(sides(row));
          head.addAll(cells(row, depth));
        } else {
          rows.add(filled(cells(row, depth), columns.size()));
        }
      }
    }
    return new Block.Table(columns, head, rows);
  }

  private static List<Side> sides(Node row) {
    List<Side> sides = new ArrayList<>();
    for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
      sides.add(side(((TableCell) cell).getAlignment()));
    }
    return sides;
  }

  private static Side side(TableCell.Alignment alignment) {
    if (alignment == TableCell.Alignment.RIGHT) {
      return Side.RIGHT;
    }
    return alignment == TableCell.Alignment.CENTER ? Side.CENTRE : Side.LEFT;
  }

  private List<List<Inline>> cells(Node row, int depth) {
    List<List<Inline>> cells = new ArrayList<>();
    for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
      cells.add(inlines.children(cell, depth));
    }
    return cells;
  }

  private static List<List<Inline>> filled(List<List<Inline>> cells, int columns) {
    List<List<Inline>> filled = new ArrayList<>(cells.subList(0, Math.min(cells.size(), columns)));
    while (filled.size() < columns) {
      filled.add(List.of());
    }
    return filled;
  }
}
