package limberboard.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import limberboard.boat.Workspace;
import limberboard.trace.Fault;
import limberboard.trace.review.PolicyComparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code trace-quality}: what tracing costs, beside simpler rules and the best there can be. */
@Command(
    name = "trace-quality",
    mixinStandardHelpOptions = true,
    description = {
      "Compares what tracing costs on average, in minutes until mended or handed to the yard, with"
          + " simpler rules and with what no strategy can go below.",
      "One row for each symptom and each boat it fits; every figure is worked out exactly. Takes"
          + " seconds a row, for the largest symptoms up to ten minutes and six gigabytes of"
          + " memory.",
      "The exit code is 1 when a row is dearer than one of the rules, or more than 2 % above what"
          + " is proven to be needed."
    })
final class TraceQualityCommand implements Callable<Integer> {
  private static final double PER_CENT = 100;
  private static final double CLOSE = 0.02;
  private static final double ROUNDING = 1e-6;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private RowsOption asked;

  @Option(
      names = "--work",
      paramLabel = "COUNT",
      description =
          "How many chances may be weighed for the bound of a row; 600000000 if not given.")
  private long work = PolicyComparison.USUAL_WORK;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  TraceQualityCommand(CommandContext session) {
    this.session = session;
  }

  /** A row as {@code --json} prints it; the keys are documented and stay. */
  record Row(String symptom, String boat, PolicyComparison minutes, double aboveBest) {
    boolean isGood() {
      double best =
          Math.min(
              Math.min(minutes.fileOrder(), minutes.fileQuestions()),
              Math.min(minutes.mendsOnly(), minutes.mostTelling()));
      return minutes.ours() <= best + ROUNDING && aboveBest <= CLOSE;
    }
  }

  @Override
  public Integer call() {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    List<Row> rows = new ArrayList<>();
    if (!json) {
      heading();
    }
    asked
        .faults(session, read)
        .forEachOrdered(
            fault -> {
              rows.add(row(fault));
              if (!json) {
                print(rows.get(rows.size() - 1));
              }
            });
    if (rows.isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, "no symptom and boat to compare");
    }
    if (json) {
      new JsonOutput(session.out()).print(rows);
    } else {
      summary(rows);
    }
    return rows.stream().allMatch(Row::isGood) ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private Row row(Fault fault) {
    PolicyComparison minutes = PolicyComparison.of(fault, work);
    return new Row(fault.page().id(), fault.fitting().boat().id(), minutes, minutes.aboveBest());
  }

  private void heading() {
    line(
        "symptom",
        "boat",
        "ours",
        "one step ahead",
        "file's order",
        "file's questions",
        "P over C alone",
        "most telling first",
        "lower bound",
        "above bound");
    line("---", "---", "---:", "---:", "---:", "---:", "---:", "---:", "---:", "---:");
  }

  private void print(Row row) {
    PolicyComparison minutes = row.minutes();
    line(
        row.symptom(),
        row.boat(),
        tenths(minutes.ours()),
        tenths(minutes.oneStep()),
        tenths(minutes.fileOrder()),
        tenths(minutes.fileQuestions()),
        tenths(minutes.mendsOnly()),
        tenths(minutes.mostTelling()),
        tenths(minutes.atLeast()),
        minutes.exact() ? "exact" : tenths(PER_CENT * row.aboveBest()) + " %");
    session.out().flush();
  }

  private void line(String... cells) {
    session.out().println("| " + String.join(" | ", cells) + " |");
  }

  private void summary(List<Row> rows) {
    session.out().println();
    session
        .out()
        .printf(
            Locale.ROOT,
            "%d rows, %d of them exact, the others at most %.1f %% above what is needed%n",
            rows.size(),
            rows.stream().filter(row -> row.minutes().exact()).count(),
            PER_CENT * rows.stream().mapToDouble(Row::aboveBest).max().orElseThrow());
    saving(rows, "the file's order", PolicyComparison::fileOrder);
    saving(rows, "the file's questions", PolicyComparison::fileQuestions);
    saving(rows, "P over C alone", PolicyComparison::mendsOnly);
    saving(rows, "the most telling check first", PolicyComparison::mostTelling);
    saving(rows, "one step ahead", PolicyComparison::oneStep);
  }

  private void saving(List<Row> rows, String rule, ToDoubleFunction<PolicyComparison> minutes) {
    double[] saved =
        rows.stream()
            .mapToDouble(row -> row.minutes().saves(minutes.applyAsDouble(row.minutes())))
            .sorted()
            .toArray();
    double median = (saved[(saved.length - 1) / 2] + saved[saved.length / 2]) / 2;
    session
        .out()
        .printf(
            Locale.ROOT,
            "saved against %s: %.0f %% in the median, %.0f to %.0f %%%n",
            rule,
            PER_CENT * median,
            PER_CENT * Arrays.stream(saved).min().orElseThrow(),
            PER_CENT * Arrays.stream(saved).max().orElseThrow());
  }

  private static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
