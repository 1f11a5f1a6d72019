package limberboard.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.CaseBoat;
import limberboard.boat.CaseEnd;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.boat.Workspace;
import limberboard.cases.SimilarCases;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code case list}: the recorded cases, or those like a fault that is being traced. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = {
      "Lists recorded cases, the latest first.",
      "With --like SYMPTOM those most like a fault that is being traced on --boat, with the reason."
    })
final class CaseListCommand implements Callable<Integer> {
  private static final int USUAL = 10;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;

  @Option(names = "--symptom", paramLabel = "SYMPTOM", description = "Only of this symptom.")
  private Optional<String> symptom = Optional.empty();

  @Option(names = "--open", description = "Only those that are open.")
  private boolean open;

  @Option(
      names = "--like",
      paramLabel = "SYMPTOM",
      description = "Those most like this symptom on --boat with --answer.")
  private Optional<String> like = Optional.empty();

  @Option(
      names = "--answer",
      paramLabel = "CHECK=ANSWER",
      description = "With --like: what has been found.")
  private List<String> answers = List.of();

  @Option(
      names = "--limit",
      paramLabel = "N",
      description = "How many at most; 10 with --like, otherwise all.")
  private Optional<Integer> limit = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  CaseListCommand(CommandContext session) {
    this.session = session;
  }

  /** A similar case as {@code --json} prints it. */
  record LikeView(
      double likeness,
      String reason,
      List<String> same,
      List<String> different,
      CaseView recorded) {
    static LikeView of(SimilarCases.Similar similar) {
      return new LikeView(
          similar.likeness(),
          similar.reason(),
          similar.same(),
          similar.different(),
          CaseView.of(similar.recorded()));
    }
  }

  @Override
  public Integer call() {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    limit
        .filter(most -> most < 1)
        .ifPresent(
            most -> {
              throw new Failure(ExitCode.USAGE, "--limit is 1 or more, not " + most);
            });
    return like.isPresent() ? like(read, like.get()) : all(read);
  }

  private int all(Workspace read) {
    TraceMaker maker = new TraceMaker(session, read);
    symptom.ifPresent(maker::symptom);
    List<RecordedCase> found =
        read.cases().stream()
            .filter(each -> symptom.map(each.symptom()::equals).orElse(true))
            .filter(each -> !open || each.isOpen())
            .sorted(
                Comparator.comparing(RecordedCase::date).reversed().thenComparing(RecordedCase::id))
            .limit(limit.orElse(Integer.MAX_VALUE))
            .toList();
    if (json) {
      new JsonOutput(session.out()).print(found.stream().map(CaseView::of).toList());
    } else {
      found.forEach(new CaseOutput(session, false)::line);
      if (found.isEmpty()) {
        session.out().println("There is no such case. case new writes one.");
      }
    }
    return ExitCode.OK;
  }

  private int like(Workspace read, String asked) {
    TraceMaker maker = new TraceMaker(session, read);
    Fitting fitting = maker.fitting(boat.id());
    Page<Symptom> page = maker.symptom(asked);
    RecordedCase now =
        new RecordedCase(
            "",
            page.id(),
            Optional.empty(),
            fitting.on(),
            CaseBoat.of(fitting.boat(), false),
            Map.of(),
            List.of(),
            CaseEnd.OPEN,
            "");
    Map<String, String> found = new CaseAnswers(answers).added(now, page.details()).answers();
    List<SimilarCases.Similar> similar =
        SimilarCases.of(page.id(), page.details(), fitting, found, read.cases()).stream()
            .limit(limit.orElse(USUAL))
            .toList();
    if (json) {
      new JsonOutput(session.out()).print(similar.stream().map(LikeView::of).toList());
    } else {
      similar.forEach(
          each -> {
            new CaseOutput(session, false).line(each.recorded());
            session.out().println("  like this one: " + each.reason());
          });
      if (similar.isEmpty()) {
        session.out().println("There is no earlier case of this symptom.");
      }
    }
    return ExitCode.OK;
  }
}
