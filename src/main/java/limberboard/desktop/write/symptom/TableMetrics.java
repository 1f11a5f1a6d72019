package limberboard.desktop.write.symptom;

import java.awt.FontMetrics;

/** How wide the columns of a table are and how high its rows, in pixels. Immutable. */
final class TableMetrics {
  /** Between the edge of a cell and its text. */
  static final int MARGIN = 6;

  private static final int CAUSE_LETTERS = 34;
  private static final int WEIGHT_LETTERS = 9;
  private static final int MEND_LETTERS = 20;
  private static final int NEW_LETTERS = 12;
  private static final int LEAST_ANSWER = 9;
  private static final int MOST_ANSWER = 18;
  private static final double STILL_SHARE = 0.34;
  private final int[] columns;
  private final int[] rows;

  /**
   * Measures a table.
   *
   * @param grid the table
   * @param fonts the letters
   * @param room the width there is for all of it
   */
  TableMetrics(TableGrid grid, FontMetrics fonts, int room) {
    int letter = fonts.charWidth('n');
    CellWords words = new CellWords(grid.table());
    columns = new int[grid.columns() + 1];
    for (int i = 0; i < grid.columns(); i++) {
      int width =
          switch (i) {
            case 0 -> Math.min(CAUSE_LETTERS * letter, (int) (room * STILL_SHARE));
            case 1 -> WEIGHT_LETTERS * letter;
            case 2 -> MEND_LETTERS * letter;
            default ->
                grid.at(TableGrid.HEAD_ROWS - 1, i) instanceof TableCell.Answer answer
                    ? answer(fonts, letter, words.shown(answer))
                    : NEW_LETTERS * letter;
          };
      columns[i + 1] = columns[i] + width;
    }
    rows = new int[grid.rows() + 1];
    int line = fonts.getHeight();
    for (int i = 0; i < grid.rows(); i++) {
      int height = i == 1 ? 2 * line + MARGIN : line + MARGIN + (i < TableGrid.HEAD_ROWS ? 2 : 5);
      rows[i + 1] = rows[i] + height;
    }
  }

  private static int answer(FontMetrics fonts, int letter, String words) {
    int wanted = Math.max(fonts.stringWidth(words), fonts.stringWidth("almost always"));
    return Math.max(LEAST_ANSWER * letter, Math.min(MOST_ANSWER * letter, wanted)) + 2 * MARGIN;
  }

  /** Where a column begins; that behind the last is the width. */
  int x(int column) {
    return columns[column];
  }

  /** Where a row begins; that below the last is the height. */
  int y(int row) {
    return rows[row];
  }

  /** The column at a place. */
  int column(int x) {
    return at(columns, x);
  }

  /** The row at a place. */
  int row(int y) {
    return at(rows, y);
  }

  private static int at(int[] edges, int place) {
    int at = 0;
    while (at < edges.length - 2 && edges[at + 1] <= place) {
      at++;
    }
    return at;
  }
}
