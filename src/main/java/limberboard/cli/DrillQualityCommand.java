package limberboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import limberboard.boat.Workspace;
import limberboard.drill.Counsel;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.play.AsksByChance;
import limberboard.drill.play.ByRule;
import limberboard.drill.play.CallsTheYard;
import limberboard.drill.play.FollowsAdvice;
import limberboard.drill.play.PlayedDrills;
import limberboard.trace.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code drill-quality}: whether the marks of drills are fair. */
@Command(
    name = "drill-quality",
    mixinStandardHelpOptions = true,
    description = {
      "Plays many drills in five ways and marks them: following the advice, asking by chance,"
          + " calling the yard at once, asking down the page, and asking what tells most first,"
          + " which is the one whose spread decides.",
      "One row for each symptom and each boat it fits. The exit code is 1 when following the advice"
          + " is marked worse than the planner's gap allows, asking by chance is not marked worse"
          + " in each row and much worse over all, a call at once is not marked as such, or the"
          + " skill mark is spread by more than a fifth of the minutes."
    })
final class DrillQualityCommand implements Callable<Integer> {
  private static final double FAIR = 0.2;
  private static final double ROUNDING = 0.05;
  private static final int MUCH = 5;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private RowsOption asked;

  @Option(
      names = "--drills",
      paramLabel = "COUNT",
      description = "How many drills in all for each way of playing; 1000 if not given.")
  private int drills = 1000;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  DrillQualityCommand(CommandContext session) {
    this.session = session;
  }

  /** A row as {@code --json} prints it, in minutes; the keys are documented and stay. */
  record Row(
      String symptom,
      String boat,
      int drills,
      double plan,
      double atLeast,
      double gap,
      double adviceRegret,
      double adviceMost,
      double chanceRegret,
      double yardRegret,
      int yardAtOnce,
      double pageRegret,
      double tellingRegret,
      double tellingRegretSpread,
      double tellingMinutesSpread) {}

  /**
   * How far the skill mark and the minutes are spread over all drills of one way of playing, as
   * standard deviations in minutes.
   */
  record Spread(double regret, double minutes, double share) {
    static Spread of(List<DrillMark> marks) {
      PlayedDrills all = new PlayedDrills(marks);
      double regret = all.spread(DrillMark::regret);
      double minutes = all.spread(mark -> mark.run().minutes());
      return new Spread(regret, minutes, regret / minutes);
    }
  }

  /** All rows, and the spreads over all their drills. */
  record Table(List<Row> rows, int drills, Spread telling, Spread page) {
    boolean isFair() {
      return telling.share() <= FAIR
          && average(Row::chanceRegret) > MUCH * average(Row::adviceRegret) + 1
          && rows.stream()
              .allMatch(
                  row ->
                      row.adviceMost() <= row.gap() + ROUNDING
                          && row.chanceRegret() > row.adviceRegret()
                          && row.yardAtOnce() == row.drills());
    }

    private double average(ToDoubleFunction<Row> minutes) {
      return rows.stream().mapToDouble(minutes).average().orElseThrow();
    }
  }

  @Override
  public Integer call() {
    if (drills < 1) {
      throw new Failure(ExitCode.USAGE, "--drills is a whole number from 1");
    }
    Workspace read = session.workspace(session.folders(workspace.folder()));
    List<Fault> faults = asked.faults(session, read).toList();
    if (faults.isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, "no symptom and boat to play");
    }
    int each = Math.max(1, (drills + faults.size() - 1) / faults.size());
    List<Row> rows = new ArrayList<>();
    List<DrillMark> telling = new ArrayList<>();
    List<DrillMark> page = new ArrayList<>();
    if (!json) {
      heading();
    }
    for (Fault fault : faults) {
      rows.add(row(fault, each, telling, page));
      if (!json) {
        print(rows.get(rows.size() - 1));
      }
    }
    Table table = new Table(rows, telling.size(), Spread.of(telling), Spread.of(page));
    if (json) {
      new JsonOutput(session.out()).print(table);
    } else {
      summary(table);
    }
    return table.isFair() ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private static Row row(
      Fault fault, int count, List<DrillMark> allTelling, List<DrillMark> allPage) {
    Counsel counsel = new Counsel(fault);
    PlayedDrills advice = PlayedDrills.of(fault, counsel, new FollowsAdvice().careful(), count);
    PlayedDrills chance = PlayedDrills.of(fault, counsel, new AsksByChance(1).careful(), count);
    PlayedDrills yard = PlayedDrills.of(fault, counsel, new CallsTheYard(), count);
    PlayedDrills page = PlayedDrills.of(fault, counsel, ByRule.downThePage().careful(), count);
    PlayedDrills telling =
        PlayedDrills.of(fault, counsel, ByRule.mostTellingFirst().careful(), count);
    allTelling.addAll(telling.marks());
    allPage.addAll(page.marks());
    return new Row(
        fault.page().id(),
        fault.fitting().boat().id(),
        count,
        advice.mean(DrillMark::expected),
        advice.mean(DrillMark::atLeast),
        advice.most(DrillMark::doubt),
        advice.mean(DrillMark::regret),
        advice.most(DrillMark::regret),
        chance.mean(DrillMark::regret),
        yard.mean(DrillMark::regret),
        (int) yard.yardAtOnce(),
        page.mean(DrillMark::regret),
        telling.mean(DrillMark::regret),
        telling.spread(DrillMark::regret),
        telling.spread(mark -> mark.run().minutes()));
  }

  private void heading() {
    line(
        "symptom",
        "boat",
        "best plan",
        "proven",
        "gap of a step",
        "advice",
        "at most",
        "by chance",
        "yard at once",
        "marked as such",
        "down the page",
        "most telling first",
        "spread of the mark",
        "of the minutes");
    line(
        "---", "---", "---:", "---:", "---:", "---:", "---:", "---:", "---:", "---:", "---:",
        "---:", "---:", "---:");
  }

  private void print(Row row) {
    line(
        row.symptom(),
        row.boat(),
        tenths(row.plan()),
        tenths(row.atLeast()),
        tenths(row.gap()),
        tenths(row.adviceRegret()),
        tenths(row.adviceMost()),
        tenths(row.chanceRegret()),
        tenths(row.yardRegret()),
        row.yardAtOnce() + " of " + row.drills(),
        tenths(row.pageRegret()),
        tenths(row.tellingRegret()),
        tenths(row.tellingRegretSpread()),
        tenths(row.tellingMinutesSpread()));
    session.out().flush();
  }

  private void line(String... cells) {
    session.out().println("| " + String.join(" | ", cells) + " |");
  }

  private void summary(Table table) {
    session.out().println();
    spread("what tells most first", table.drills(), table.telling());
    spread("down the page", table.drills(), table.page());
    session
        .out()
        .println(
            "The spread is the standard deviation. Minutes of the mark are what the way of playing"
                + " costs on average more than the best plan.");
  }

  private void spread(String played, int drills, Spread spread) {
    session
        .out()
        .printf(
            Locale.ROOT,
            "%d drills played %s: the skill mark is spread by %.1f minutes, the minutes by %.1f, a"
                + " share of %.2f%n",
            drills,
            played,
            spread.regret(),
            spread.minutes(),
            spread.share());
  }

  private static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
