package limberboard.desktop.drills;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import limberboard.drill.learn.ClassResults;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.learn.Progress;
import limberboard.drill.mark.MistakeKind;
import limberboard.words.Sentences;

/**
 * Where a class loses minutes, as rows and columns.
 *
 * @param columns what it is by, the dearest first
 * @param rows one a student, who lost most first
 * @param none what an empty field says
 */
record ClassFigures(List<String> columns, List<Line> rows, String none) {

  /** Copies the lists. */
  ClassFigures {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A student.
   *
   * @param student name or number
   * @param cells one a column
   * @param drills how many were played
   * @param lost minutes lost in all
   * @param dangers things that could have hurt somebody
   */
  record Line(String student, List<Cell> cells, int drills, double lost, int dangers) {
    /** Copies the list. */
    Line {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What a student lost at one thing.
   *
   * @param drilled whether it was met at all
   * @param lost minutes
   * @param dangers things that could have hurt somebody
   */
  record Cell(boolean drilled, double lost, int dangers) {}

  /** By symptom. */
  static ClassFigures bySymptom(ClassResults results, UnaryOperator<String> titles) {
    List<String> ids = List.copyOf(results.all().symptoms().keySet());
    List<Line> rows = new ArrayList<>();
    for (Progress each : results.students()) {
      Map<String, Progress.Cost> costs = each.symptoms();
      rows.add(
          line(
              each,
              ids.stream()
                  .map(
                      id ->
                          costs.containsKey(id)
                              ? new Cell(true, costs.get(id).regret(), costs.get(id).dangers())
                              : new Cell(false, 0, 0))
                  .toList()));
    }
    return sorted(ids.stream().map(titles).toList(), rows, "not drilled");
  }

  /** By kind of mistake. */
  static ClassFigures byMistake(ClassResults results) {
    Map<MistakeKind, Double> all = results.all().mistakes();
    List<MistakeKind> kinds = List.copyOf(all.keySet());
    List<Line> rows = new ArrayList<>();
    for (Progress each : results.students()) {
      Map<MistakeKind, Double> costs = new LinkedHashMap<>(each.mistakes());
      rows.add(
          line(
              each,
              kinds.stream()
                  .map(kind -> new Cell(costs.containsKey(kind), costs.getOrDefault(kind, 0.0), 0))
                  .toList()));
    }
    return sorted(
        kinds.stream().map(kind -> Sentences.capital(kind.said())).toList(), rows, "none");
  }

  private static Line line(Progress each, List<Cell> cells) {
    return new Line(
        each.student(),
        cells,
        each.drills().size(),
        each.drills().stream().mapToDouble(DrillRecord::regret).sum(),
        each.drills().stream().mapToInt(DrillRecord::dangers).sum());
  }

  private static ClassFigures sorted(List<String> columns, List<Line> rows, String none) {
    return new ClassFigures(
        columns,
        rows.stream().sorted(Comparator.comparingDouble((Line row) -> -row.lost())).toList(),
        none);
  }

  /** The most that anybody lost at one thing, in minutes, at least 1. */
  double most() {
    return rows.stream().flatMap(row -> row.cells().stream()).mapToDouble(Cell::lost).max().stream()
        .map(most -> Math.max(1, most))
        .findFirst()
        .orElse(1);
  }
}
