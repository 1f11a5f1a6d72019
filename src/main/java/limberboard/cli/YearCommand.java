package limberboard.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.page.Page;
import limberboard.library.value.Need;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.YearOfWork;
import limberboard.words.Minutes;
import limberboard.words.Sentences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code year}: what an average year of a boat asks of her owner. */
@Command(
    name = "year",
    mixinStandardHelpOptions = true,
    description = {
      "Says how many hours an average year of a boat asks of her owner, by what is needed most,"
          + " without opening what is in the way.",
      "BOAT may be one that nobody has entered, such as \"a tarnwick-30 of 2017\"."
    })
final class YearCommand implements Callable<Integer> {
  private static final int SEASONS = 12;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--boat", paramLabel = "BOAT", required = true, description = "The boat.")
  private String boat;

  @Mixin private DayOption day;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  YearCommand(CommandContext session) {
    this.session = session;
  }

  /** The year as JSON; the keys are documented and stay. */
  record YearView(
      String boat,
      int seasons,
      List<NeedView> needs,
      List<LineView> lines,
      List<String> uncounted) {
    /** How much there is of what is needed so much. */
    record NeedView(String need, double lines, double minutes) {}

    /** One line. */
    record LineView(String page, String need, boolean appointment, double times, double minutes) {}

    static YearView of(String boat, YearOfWork year) {
      return new YearView(
          boat,
          year.seasons(),
          List.of(Need.values()).stream()
              .map(need -> new NeedView(need.word(), year.count(need), year.minutes(need)))
              .toList(),
          year.lines().stream()
              .map(
                  line ->
                      new LineView(
                          line.work().id(),
                          line.need().word(),
                          line.appointment(),
                          line.times(),
                          line.minutes()))
              .toList(),
          year.uncounted().stream().map(Page::id).toList());
    }
  }

  /** In the place of how often: it is done only as a look again at other work. */
  private static final String LOOKS_AGAIN = "  again";

  @Override
  public Integer call() {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    Fitting fitting = day.in(session).fitting(read, Optional.of(boat)).orElseThrow();
    YearOfWork year = YearOfWork.of(Upkeep.of(read.library(), fitting), SEASONS);
    if (json) {
      new JsonOutput(session.out()).print(YearView.of(fitting.boat().id(), year));
    } else {
      print(fitting, year);
    }
    return ExitCode.OK;
  }

  private void print(Fitting fitting, YearOfWork year) {
    session
        .out()
        .println(
            "An average year of "
                + fitting.boat().name()
                + ", over "
                + year.seasons()
                + " seasons: an estimate, without opening what is in the way");
    for (Need need : Need.values()) {
      List<YearOfWork.Line> lines =
          year.lines().stream().filter(line -> line.need() == need).toList();
      session.out().println();
      session
          .out()
          .println(
              String.format(
                  Locale.ROOT,
                  "%s: %.0f of these %d in a year, %s",
                  Sentences.capital(need.spoken()),
                  year.count(need),
                  lines.size(),
                  Minutes.forWhom(year.minutes(need))));
      lines.forEach(this::line);
    }
    if (!year.uncounted().isEmpty()) {
      session.out().println();
      session
          .out()
          .println("Not counted, because the log lacks the readings that say how often it comes:");
      year.uncounted().forEach(page -> session.out().println("  " + page.title()));
    }
  }

  private void line(YearOfWork.Line line) {
    session
        .out()
        .println(
            String.format(
                Locale.ROOT,
                "  %9s  %s  %s%s",
                Minutes.words(line.minutes()),
                line.times() == 0
                    ? LOOKS_AGAIN
                    : String.format(Locale.ROOT, "%5.2f ×", line.times()),
                line.work().title(),
                line.appointment() ? " (your own time)" : ""));
  }
}
