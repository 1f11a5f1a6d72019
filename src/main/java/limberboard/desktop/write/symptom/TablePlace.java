package limberboard.desktop.write.symptom;

/**
 * A place in the table.
 *
 * @param row from 0
 * @param column from 0
 */
record TablePlace(int row, int column) {
  /** The nearest place in a grid where something can be filled in. */
  TablePlace within(TableGrid grid) {
    int near = Math.min(row, grid.rows() - 1);
    for (int reach = 0; reach < grid.rows() + grid.columns(); reach++) {
      for (int by : new int[] {-reach, reach}) {
        int at = Math.min(column, grid.columns() - 1);
        if (grid.isOpen(near + by, at)) {
          return new TablePlace(near + by, at);
        }
        if (grid.isOpen(near, at + by)) {
          return new TablePlace(near, at + by);
        }
      }
    }
    return new TablePlace(0, 0);
  }

  /** The next place up or down where something can be filled in; the same where there is none. */
  TablePlace down(TableGrid grid, int by) {
    for (int at = row + by; at >= 0 && at < grid.rows(); at += by) {
      if (grid.isOpen(at, column)) {
        return new TablePlace(at, column);
      }
    }
    return this;
  }

  /**
   * The next place left or right where something can be filled in; the same where there is none.
   */
  TablePlace right(TableGrid grid, int by) {
    int at = by > 0 ? grid.behind(row, column) : grid.first(row, column) - 1;
    for (; at >= 0 && at < grid.columns(); at += by) {
      if (grid.isOpen(row, at)) {
        return new TablePlace(row, grid.first(row, at));
      }
    }
    return this;
  }

  /** The first or last place of the row where something can be filled in. */
  TablePlace atEnd(TableGrid grid, int by) {
    TablePlace place = this;
    for (TablePlace next = right(grid, by); !next.equals(place); next = next.right(grid, by)) {
      place = next;
    }
    return place;
  }

  /**
   * The place that is usually filled in next: down the causes, then on to the next answer's first
   * cause.
   */
  TablePlace next(TableGrid grid) {
    TableCell cell = grid.at(row, column);
    if (cell instanceof TableCell.Word word) {
      boolean last = word.cause() == grid.table().causes().size() - 1;
      if (!last && word.cause() != TableCell.Word.OTHERS) {
        return down(grid, 1);
      }
      TablePlace top = new TablePlace(TableGrid.HEAD_ROWS, column);
      TablePlace over = grid.isOpen(top.row(), column) ? top.right(grid, 1) : this;
      return over.equals(top) ? this : over;
    }
    if (cell instanceof TableCell.Answer || cell instanceof TableCell.PageTitle) {
      TablePlace beside = right(grid, 1);
      boolean asked =
          grid.at(beside.row(), beside.column()) instanceof TableCell.Answer other
              && cell instanceof TableCell.Answer answer
              && other.check() == answer.check()
              && !new CellWords(grid.table()).isThere(other);
      return asked || cell instanceof TableCell.PageTitle ? beside : down(grid, 1);
    }
    return cell instanceof TableCell.Zones ? this : down(grid, 1);
  }
}
