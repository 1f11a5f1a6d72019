package limberboard.cli;

import java.util.List;
import java.util.concurrent.Callable;
import limberboard.boat.CaseWriter;
import limberboard.boat.RecordedCase;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Symptom;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code case close}: completes a case. */
@Command(
    name = "close",
    mixinStandardHelpOptions = true,
    description = {
      "Completes an open case: what it was, what was done, how long it took.",
      "What the file says already stays as it is, to the letter. A case that is closed is changed"
          + " only with --again."
    })
final class CaseCloseCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private CaseEndOptions end;

  @Parameters(paramLabel = "CASE", description = "The case's id, as case list shows it.")
  private String id;

  @Option(
      names = "--answer",
      paramLabel = "CHECK=ANSWER",
      description = "What was found besides; ? as the answer means it could not be told.")
  private List<String> answers = List.of();

  @Option(names = "--again", description = "Correct a case that is closed.")
  private boolean again;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  CaseCloseCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.foldersToWrite(workspace.folder());
    Workspace read = session.workspace(folders);
    List<String> ids = read.cases().stream().map(RecordedCase::id).toList();
    if (!ids.contains(id)) {
      throw Failure.unknown("case", id, ids, "case list shows them");
    }
    return new CaseOutput(session, json)
        .written(
            new CaseWriter(folders).change(read.library(), id, before -> closed(before, read)));
  }

  private RecordedCase closed(RecordedCase before, Workspace read) {
    if (!before.isOpen() && !again) {
      throw new Failure(ExitCode.USAGE, id + " is closed; write --again to correct what it says");
    }
    Symptom symptom = read.library().symptom(before.symptom()).orElseThrow().details();
    return end.ended(new CaseAnswers(answers).added(before, symptom), symptom);
  }
}
