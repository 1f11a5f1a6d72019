package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
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
    return maker.trace(
        new TraceRequest(
            symptom, boat.id(), answers.stream().map(TraceRequest.Found::parse).toList()));
  }
}
