package limberboard.desktop.write.symptom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.writing.symptom.SymptomTable;
import limberboard.writing.symptom.TableCheck;

/**
 * How a symptom's causes and checks lie in rows and columns: a cause a row, an answer a column, the
 * checks above their answers. Immutable.
 */
final class TableGrid {
  /** Rows above the causes: the page, the question, how, minutes, the answers. */
  static final int HEAD_ROWS = 5;

  /** Columns before the answers: the cause, its weight, its mend. */
  static final int HEAD_COLUMNS = 3;

  /** Columns that stay in sight: the cause and its weight. */
  static final int STILL_COLUMNS = 2;

  private static final int ASK = 1;
  private static final int HOW = 2;
  private static final int MINUTES = 3;
  private static final int ANSWERS = 4;
  private static final int FEWEST_ANSWERS = 2;
  private final SymptomTable table;
  private final List<TableCell.Answer> answers = new ArrayList<>();

  TableGrid(SymptomTable table) {
    this.table = table;
    for (TableCheck check : table.checks()) {
      int places = check.answers().size();
      int shown = places < FEWEST_ANSWERS ? places + 1 : places;
      IntStream.range(0, shown)
          .forEach(place -> answers.add(new TableCell.Answer(check.number(), place)));
    }
  }

  SymptomTable table() {
    return table;
  }

  /** How many rows: the head, the causes, all others, and one for a new cause. */
  int rows() {
    return HEAD_ROWS + table.causes().size() + 2;
  }

  /** How many columns: the head, the answers, and one for a new check. */
  int columns() {
    return HEAD_COLUMNS + answers.size() + 1;
  }

  /** What stands at a place. */
  TableCell at(int row, int column) {
    if (row == 0) {
      return column < STILL_COLUMNS ? new TableCell.PageTitle() : new TableCell.Zones();
    }
    if (row < HEAD_ROWS) {
      return head(row, column);
    }
    int cause = row - HEAD_ROWS;
    if (cause < table.causes().size()) {
      return cause(cause, column);
    }
    if (cause == table.causes().size()) {
      return column == 0
          ? new TableCell.Caption("All other causes")
          : word(column, TableCell.Word.OTHERS);
    }
    return column == 0 ? new TableCell.NewCause() : new TableCell.Caption("");
  }

  private TableCell head(int row, int column) {
    if (column < HEAD_COLUMNS) {
      return new TableCell.Caption(caption(row, column));
    }
    int place = column - HEAD_COLUMNS;
    if (place >= answers.size()) {
      return row == ASK ? new TableCell.NewCheck() : new TableCell.Caption("");
    }
    TableCell.Answer answer = answers.get(place);
    return switch (row) {
      case ASK -> new TableCell.Ask(answer.check());
      case HOW -> new TableCell.How(answer.check());
      case MINUTES -> new TableCell.CheckMinutes(answer.check());
      default -> answer;
    };
  }

  private static String caption(int row, int column) {
    if (row == ANSWERS) {
      return List.of("Cause", "Weight", "Mended by").get(column);
    }
    return column == 0 ? List.of("", "Check", "How it is done", "Minutes").get(row) : "";
  }

  private TableCell cause(int cause, int column) {
    return switch (column) {
      case 0 -> new TableCell.CauseTitle(cause);
      case 1 -> new TableCell.Weight(cause);
      case 2 -> new TableCell.Mend(cause);
      default -> word(column, cause);
    };
  }

  private TableCell word(int column, int cause) {
    int place = column - HEAD_COLUMNS;
    if (place < 0 || place >= answers.size()) {
      return new TableCell.Caption("");
    }
    TableCell.Answer answer = answers.get(place);
    return answer.place() < table.checks().get(answer.check()).answers().size()
        ? new TableCell.Word(answer.check(), answer.place(), cause)
        : new TableCell.Caption("");
  }

  /** The first column that the cell at a place takes. */
  int first(int row, int column) {
    int first = column;
    while (first > 0 && isOne(row, first - 1, column)) {
      first--;
    }
    return first;
  }

  /** The column behind the last that the cell at a place takes. */
  int behind(int row, int column) {
    int behind = column + 1;
    while (behind < columns() && isOne(row, behind, column)) {
      behind++;
    }
    return behind;
  }

  private boolean isOne(int row, int one, int other) {
    TableCell cell = at(row, one);
    return !(cell instanceof TableCell.Caption) && cell.equals(at(row, other));
  }

  /** Where a cell stands; empty when the table has none of it. */
  Optional<TablePlace> find(TableCell cell) {
    for (int row = 0; row < rows(); row++) {
      for (int column = 0; column < columns(); column++) {
        if (at(row, column).equals(cell)) {
          return Optional.of(new TablePlace(row, column));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether there is something to be filled in at a place. */
  boolean isOpen(int row, int column) {
    return row >= 0
        && row < rows()
        && column >= 0
        && column < columns()
        && !(at(row, column) instanceof TableCell.Caption);
  }
}
