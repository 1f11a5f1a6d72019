package limberboard.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.trace.learning.LearningReview;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code learning}: what the recorded cases have taught. */
@Command(
    name = "learning",
    mixinStandardHelpOptions = true,
    description = {
      "Says what the recorded cases have taught tracing: how far the chances moved toward the"
          + " cases' frequencies, and what cases that are held back cost with and without them.",
      "The cases are shared out into groups; each is traced again with what the other groups teach."
          + " Takes a minute or two. The exit code is 1 when learning did not pay."
    })
final class LearningCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(
      names = "--folds",
      paramLabel = "N",
      description = "Into how many groups the cases are shared out, 2 to 100; 10 if not given.")
  private int folds = 10;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "How they are shared out; 1 if not given.")
  private long seed = 1;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  LearningCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (folds < 2 || folds > 100) {
      throw new Failure(ExitCode.USAGE, "--folds is a number from 2 to 100, not " + folds);
    }
    Workspace read = session.workspace(session.folders(workspace.folder()));
    LearningReview review = LearningReview.of(read, folds, seed);
    if (review.replayed() == 0) {
      throw new Failure(ExitCode.NOT_FOUND, "no recorded case proves a cause of a known boat yet");
    }
    if (json) {
      new JsonOutput(session.out()).print(View.of(review));
    } else {
      print(review);
    }
    boolean pays =
        review.after() < review.before() && review.minutesWith() < review.minutesWithout();
    return pays ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  /** A review as {@code --json} prints it; the keys are documented and stay. */
  record View(
      LearningReview review,
      int cases,
      double apartBefore,
      double apartAfter,
      double minutesSaved) {
    static View of(LearningReview review) {
      return new View(
          review,
          review.cases(),
          review.before(),
          review.after(),
          review.minutesWithout() - review.minutesWith());
    }
  }

  private void print(LearningReview review) {
    PrintWriter out = session.out();
    out.println("Chances before any answer, and how often the causes were found (total variation");
    out.println("distance, 0 the same, 1 nothing in common):");
    out.printf(Locale.ROOT, "%-34s %6s %10s %10s%n", "symptom", "cases", "estimated", "learnt");
    for (LearningReview.Moved each : review.symptoms()) {
      out.printf(
          Locale.ROOT,
          "%-34s %6d %10.3f %10.3f%n",
          each.symptom(),
          each.cases(),
          each.before(),
          each.after());
    }
    out.printf(
        Locale.ROOT,
        "%-34s %6d %10.3f %10.3f%n%n",
        "all, each by its cases",
        review.cases(),
        review.before(),
        review.after());
    out.printf(
        Locale.ROOT,
        "%d cases held back in %d groups and traced again, minutes until mended or with the"
            + " yard:%n",
        review.replayed(),
        review.folds());
    out.printf(
        Locale.ROOT,
        "%.1f with the estimates alone, %.1f with what the other groups teach: %.1f less (±"
            + " %.1f)%n",
        review.minutesWithout(),
        review.minutesWith(),
        review.minutesWithout() - review.minutesWith(),
        review.error());
  }
}
