package limberboard.cli;

import java.util.List;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.cases.NextPages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code next-pages}: what an author might write or mend next. */
@Command(
    name = "next-pages",
    mixinStandardHelpOptions = true,
    description = {
      "Lists what to write or mend next by what the recorded cases say, with the evidence: causes"
          + " found as something else, checks that owners cannot answer, mends that do not cure,"
          + " procedures whose minutes are off. What has most cases behind it comes first."
    })
final class NextPagesCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  NextPagesCommand(CommandContext session) {
    this.session = session;
  }

  /** A hint as {@code --json} prints it; the keys are documented and stay. */
  record HintView(
      String kind,
      String page,
      String part,
      int cases,
      String todo,
      String evidence,
      List<String> examples) {
    static HintView of(NextPages.Hint hint) {
      return new HintView(
          word(hint.kind()),
          hint.page(),
          hint.part(),
          hint.cases(),
          hint.todo(),
          hint.evidence(),
          hint.examples());
    }

    private static String word(NextPages.Kind kind) {
      return switch (kind) {
        case SOMETHING_ELSE -> "something-else";
        case NOT_ANSWERED -> "not-answered";
        case NOT_CURED -> "not-cured";
        case MINUTES_OFF -> "minutes-off";
      };
    }
  }

  @Override
  public Integer call() {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    List<NextPages.Hint> hints = NextPages.of(read.library(), read.cases());
    if (json) {
      new JsonOutput(session.out()).print(hints.stream().map(HintView::of).toList());
      return ExitCode.OK;
    }
    int number = 1;
    for (NextPages.Hint hint : hints) {
      session.out().println(number++ + ". " + hint.page() + ": " + hint.todo());
      session.out().println("   " + hint.evidence() + ".");
      session.out().println("   For example " + String.join(", ", hint.examples()) + ".");
    }
    if (hints.isEmpty()) {
      session.out().println("The recorded cases suggest nothing.");
    }
    return ExitCode.OK;
  }
}
