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
import limberboard.cases.StatisticsWords;
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
  private static final int HOUR = 60;
  private static final String NONE = "–";

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
        OptionalDouble minutesInAll,
        OptionalDouble cost,
        int paid,
        OptionalDouble costInAll) {}

    static View of(CaseStatistics statistics, StatisticsWords names) {
      return new View(
          statistics.cases(),
          statistics.seasons(),
          rows(statistics, By.MODEL, names),
          rows(statistics, By.SEASON, names),
          rows(statistics, By.SYSTEM, names),
          rows(statistics, By.CAUSE, names),
          statistics.rising());
    }

    private static List<RowView> rows(CaseStatistics statistics, By by, StatisticsWords names) {
      return statistics.by(by).stream()
          .map(
              row ->
                  new RowView(
                      row.id(),
                      names.of(row),
                      row.cases(),
                      new TreeMap<>(row.seasons()),
                      row.minutes().median(),
                      row.minutes().known(),
                      row.minutes().inAll(),
                      row.cost().median(),
                      row.cost().known(),
                      row.cost().inAll()))
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
    StatisticsWords names = new StatisticsWords(read.library());
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

  private static String table(CaseStatistics statistics, StatisticsWords names) {
    List<String> columns =
        new ArrayList<>(
            List.of(
                "by",
                "id",
                "title",
                "cases",
                "minutes",
                "timed",
                "cost",
                "paid",
                "minutes-in-all",
                "cost-in-all"));
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
                  number(row.minutes().median()),
                  row.minutes().known(),
                  number(row.cost().median()),
                  row.cost().known(),
                  number(row.minutes().inAll()),
                  number(row.cost().inAll())));
      statistics.seasons().forEach(season -> cells.add(row.in(season)));
      table.row(cells);
    }
    return table.text();
  }

  private static String number(OptionalDouble number) {
    return number.isPresent() ? String.format(Locale.ROOT, "%.0f", number.getAsDouble()) : "";
  }

  private static String cell(OptionalDouble number, int unit) {
    return number.isPresent()
        ? String.format(Locale.ROOT, "%.0f", number.getAsDouble() / unit)
        : NONE;
  }

  private void print(CaseStatistics statistics, StatisticsWords names) {
    PrintWriter out = session.out();
    out.println(
        statistics.cases()
            + " recorded cases. \"min\" and \"cost\" are medians of those that say so, \"h all\""
            + " and \"cost all\" their sums; "
            + NONE
            + " is not recorded.");
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
      String title, List<Row> rows, CaseStatistics statistics, StatisticsWords names) {
    PrintWriter out = session.out();
    out.println();
    StringBuilder head = new StringBuilder();
    statistics.seasons().forEach(season -> head.append(String.format(Locale.ROOT, "%6d", season)));
    out.printf(
        Locale.ROOT,
        "%6s %6s %6s %6s %8s%s  %s%n",
        "cases",
        "min",
        "h all",
        "cost",
        "cost all",
        head,
        title);
    for (Row row : rows) {
      StringBuilder seasons = new StringBuilder();
      statistics
          .seasons()
          .forEach(season -> seasons.append(String.format(Locale.ROOT, "%6d", row.in(season))));
      out.printf(
          Locale.ROOT,
          "%6d %6s %6s %6s %8s%s  %s%n",
          row.cases(),
          cell(row.minutes().median(), 1),
          cell(row.minutes().inAll(), HOUR),
          cell(row.cost().median(), 1),
          cell(row.cost().inAll(), 1),
          seasons,
          names.of(row));
    }
  }
}
