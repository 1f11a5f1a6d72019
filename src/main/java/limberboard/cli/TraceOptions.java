package limberboard.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What commands that look at a trace share: a symptom, a boat, a workspace and what was found. */
final class TraceOptions {
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;

  @Parameters(paramLabel = "SYMPTOM", description = "The symptom's id.")
  private String symptom;

  @Option(
      names = "--answer",
      paramLabel = "CHECK=ANSWER",
      description =
          "What has been found; ? as the answer means it could not be told, CHECK=made-safe that"
              + " what comes first for safety was made safe, CAUSE=not-cured that its mend was made"
              + " and did not cure.")
  private List<String> answers = List.of();

  String symptom() {
    return symptom;
  }

  Optional<String> boat() {
    return boat.id();
  }

  boolean hasAnswers() {
    return !answers.isEmpty();
  }

  WorkspaceFolders folders(CommandContext session) {
    return session.folders(workspace.folder());
  }

  /** Reads the workspace. */
  Workspace workspace(CommandContext session) {
    return session.workspace(folders(session));
  }

  /** The trace of the symptom with these answers. */
  Trace trace(TraceMaker maker) {
    return maker.trace(new TraceRequest(symptom, boat.id(), found()));
  }

  /**
   * The same after what was found before, as far as it is hers, on a boat that is known already
   * unless another is asked for.
   */
  Trace trace(TraceMaker maker, Optional<Fitting> known, List<TraceRequest.Found> before) {
    Fitting fitting =
        boat.id().isEmpty() && known.isPresent() ? known.get() : maker.fitting(boat.id());
    Page<Symptom> page = maker.symptom(symptom);
    Fault fault = maker.begin(page, fitting).fault();
    return maker.trace(
        page,
        fitting,
        Stream.concat(
                before.stream().filter(each -> fault.hasCheck(each.check())), found().stream())
            .toList());
  }

  private List<TraceRequest.Found> found() {
    return answers.stream().map(TraceRequest.Found::parse).toList();
  }
}
