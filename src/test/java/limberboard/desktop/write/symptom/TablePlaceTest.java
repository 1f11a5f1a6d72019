package limberboard.desktop.write.symptom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import limberboard.writing.PageText;
import limberboard.writing.symptom.SymptomTable;
import org.junit.jupiter.api.Test;

/** Every cell is reached with the arrows, and filling goes on where it usually does. */
class TablePlaceTest {
  private static TableGrid grid() {
    String page =
        """
        ---
        title: Wet
        causes:
          - {id: a, title: A}
          - {id: b, title: B}
        checks:
          - {id: c, ask: One, answers: [x, y]}
          - {id: d, ask: Two, answers: []}
        ---
        """;
    return new TableGrid((SymptomTable) SymptomTable.read(new PageText(page)));
  }

  private static TablePlace of(TableGrid grid, TableCell cell) {
    return grid.find(cell).orElseThrow();
  }

  private static TableCell cell(TableGrid grid, TablePlace place) {
    return grid.at(place.row(), place.column());
  }

  @Test
  void everyOpenCellIsReached() {
    TableGrid grid = grid();
    Set<TableCell> reached = new HashSet<>();
    Set<TablePlace> seen = new HashSet<>(Set.of(new TablePlace(0, 0)));
    for (boolean more = true; more; ) {
      Set<TablePlace> next = new HashSet<>(seen);
      for (TablePlace place : seen) {
        reached.add(cell(grid, place));
        next.add(place.right(grid, 1));
        next.add(place.right(grid, -1));
        next.add(place.down(grid, 1));
        next.add(place.down(grid, -1));
      }
      more = !next.equals(seen);
      seen = next;
    }
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        if (grid.isOpen(row, column)) {
          assertThat(reached).contains(grid.at(row, column));
        }
      }
    }
    assertThat(reached).contains(new TableCell.NewCheck(), new TableCell.NewCause());
  }

  @Test
  void fillingGoesDownTheCausesAndOnToTheNextAnswer() {
    TableGrid grid = grid();
    TablePlace first = of(grid, new TableCell.Word(0, 0, 0));
    TablePlace second = first.next(grid);
    assertThat(cell(grid, second)).isEqualTo(new TableCell.Word(0, 0, 1));
    assertThat(cell(grid, second.next(grid))).isEqualTo(new TableCell.Word(0, 1, 0));
    TablePlace last = of(grid, new TableCell.Word(0, 1, 1));
    assertThat(cell(grid, last.next(grid))).isEqualTo(new TableCell.Word(0, 1, 1));
    TablePlace others = of(grid, new TableCell.Word(0, 0, TableCell.Word.OTHERS));
    assertThat(cell(grid, others.next(grid))).isEqualTo(new TableCell.Word(0, 1, 0));
  }

  @Test
  void aCheckTakesTheColumnsOfItsAnswers() {
    TableGrid grid = grid();
    TablePlace ask = of(grid, new TableCell.Ask(0));
    assertThat(grid.behind(ask.row(), ask.column()) - ask.column()).isEqualTo(2);
    assertThat(cell(grid, ask.right(grid, 1))).isEqualTo(new TableCell.Ask(1));
    assertThat(cell(grid, ask.right(grid, 1).right(grid, 1))).isEqualTo(new TableCell.NewCheck());
    assertThat(cell(grid, of(grid, new TableCell.Ask(1)).right(grid, -1)))
        .isEqualTo(new TableCell.Ask(0));
    assertThat(cell(grid, of(grid, new TableCell.Answer(1, 0)).right(grid, 1)))
        .isEqualTo(new TableCell.Answer(1, 0));
  }

  @Test
  void aPlaceThatIsGoneBecomesTheNearest() {
    TableGrid grid = grid();
    TablePlace far = new TablePlace(40, 40).within(grid);
    assertThat(grid.isOpen(far.row(), far.column())).isTrue();
    assertThat(new TablePlace(5, 0).within(grid)).isEqualTo(new TablePlace(5, 0));
  }
}
