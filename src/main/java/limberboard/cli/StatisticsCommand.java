package limberboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.cases.CaseStatistics;
import limberboard.cases.CaseStatistics.By;
import limberboard.cases.CaseStatistics.Row;
import limberboard.cases.RisingCause;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.drawing.StatisticsDrawing;
import limberboard.print.sheet.CsvTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code statistics}: the recorded cases, counted. */
@Command(
    name = "statistics",
    mixinStandardHelpOptions = true,
    description = {
      "Counts the recorded cases by model, season, system and cause: how often, how long, what it"
          + " cost, and from season to season; and names causes that come up on boats of one model"
          + " and a few years of building."
    })
final class StatisticsCommand implements Callable<Integer> {
  private static final int MOST_CAUSES = 15;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(names = "--csv", paramLabel = "FILE", description = "Write all counts as a table.")
  private Optional<Path> csv = Optional.empty();

  @Option(names = "--svg", paramLabel = "FILE", description = "Write them as one drawing.")
  private Optional<Path> svg = Optional.empty();

  StatisticsCommand(CommandContext session) {
    this.session = session;
  }

  /** Statistics as {@code --json} prints them; the keys are documented and stay. */
  record View(
      int cases,
      List<Integer> seasons,
      List<RowView> models,
      List<RowView> years,
      List<RowView> systems,
      List<RowView> causes,
      List<RisingCause> rising) {
    /** A row. */
    record RowView(
        String id,
        String title,
        int cases,
        Map<Integer, Integer> seasons,
        OptionalDouble minutes,
        int timed,
        OptionalDouble cost,
        int paid) {}

    static View of(CaseStatistics statistics, StatisticsNames names) {
      return new View(
          statistics.cases(),
          statistics.seasons(),
          rows(statistics, By.MODEL, names),
          rows(statistics, By.SEASON, names),
          rows(statistics, By.SYSTEM, names),
          rows(statistics, By.CAUSE, names),
          statistics.rising());
    }

    private static List<RowView> rows(CaseStatistics statistics, By by, StatisticsNames names) {
      return statistics.by(by).stream()
          .map(
              row ->
                  new RowView(
                      row.id(),
                      names.of(row),
                      row.cases(),
                      new TreeMap<>(row.seasons()),
                      row.minutes(),
                      row.timed(),
                      row.cost(),
                      row.paid()))
          .toList();
    }
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    CaseStatistics statistics = CaseStatistics.of(read.library(), read.cases());
    if (statistics.cases() == 0) {
      throw new Failure(ExitCode.NOT_FOUND, "there are no recorded cases yet; case new writes one");
    }
    StatisticsNames names = new StatisticsNames(read.library());
    OutFiles files = new OutFiles(session, folders, json);
    csv.ifPresent(file -> files.text(file, table(statistics, names)));
    svg.ifPresent(file -> files.text(file, new StatisticsDrawing(statistics, names).svg()));
    if (json) {
      new JsonOutput(session.out()).print(View.of(statistics, names));
    } else if (csv.isEmpty() && svg.isEmpty()) {
      print(statistics, names);
    }
    return ExitCode.OK;
  }

  private static String table(CaseStatistics statistics, StatisticsNames names) {
    List<String> columns =
        new ArrayList<>(List.of("by", "id", "title", "cases", "minutes", "timed", "cost", "paid"));
    statistics.seasons().forEach(season -> columns.add(Integer.toString(season)));
    CsvTable table = new CsvTable(columns.toArray(String[]::new));
    for (Row row : statistics.rows()) {
      List<Object> cells =
          new ArrayList<>(
              List.of(
                  row.by().name().toLowerCase(Locale.ROOT),
                  row.id(),
                  names.of(row),
                  row.cases(),
                  number(row.minutes()),
                  row.timed(),
                  number(row.cost()),
                  row.paid()));
      statistics.seasons().forEach(season -> cells.add(row.in(season)));
      table.row(cells);
    }
    return table.text();
  }

  private static String number(OptionalDouble number) {
    return number.isPresent() ? String.format(Locale.ROOT, "%.0f", number.getAsDouble()) : "";
  }

  private void print(CaseStatistics statistics, StatisticsNames names) {
    PrintWriter out = session.out();
    out.println(
        statistics.cases() + " recorded cases. Minutes and cost are medians of those that say so.");
    part("By model", statistics.by(By.MODEL), statistics, names);
    part("By season", statistics.by(By.SEASON), statistics, names);
    part("By system", statistics.by(By.SYSTEM), statistics, names);
    part(
        "The most frequent causes",
        statistics.by(By.CAUSE).stream().limit(MOST_CAUSES).toList(),
        statistics,
        names);
    if (!statistics.rising().isEmpty()) {
      out.println();
      out.println("What comes up, to tell owners before it happens");
      statistics.rising().stream()
          .sorted(Comparator.comparing(RisingCause::accident))
          .forEach(each -> out.println("  " + names.of(each)));
    }
  }

  private void part(
      String title, List<Row> rows, CaseStatistics statistics, StatisticsNames names) {
    PrintWriter out = session.out();
    out.println();
    StringBuilder head = new StringBuilder();
    statistics.seasons().forEach(season -> head.append(String.format(Locale.ROOT, "%6d", season)));
    out.printf(Locale.ROOT, "%6s %6s %6s%s  %s%n", "cases", "min", "cost", head, title);
    for (Row row : rows) {
      StringBuilder seasons = new StringBuilder();
      statistics
          .seasons()
          .forEach(season -> seasons.append(String.format(Locale.ROOT, "%6d", row.in(season))));
      out.printf(
          Locale.ROOT,
          "%6d %6s %6s%s  %s%n",
          row.cases(),
          number(row.minutes()),
          number(row.cost()),
          seasons,
          names.of(row));
    }
  }
}
