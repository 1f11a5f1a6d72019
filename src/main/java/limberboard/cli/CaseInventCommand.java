package limberboard.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.CaseWriter;
import limberboard.boat.RecordedCase;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.learning.CaseInventor;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code case invent}: cases to try things out on. */
@Command(
    name = "invent",
    mixinStandardHelpOptions = true,
    description = {
      "Invents cases, for a demo or to see what cases teach; never do that among real ones.",
      "Boats, causes and answers are drawn from the pages' estimates times hidden factors that come"
          + " from the seed. The same pages, seed and day give the same files; those that are there"
          + " already stay."
    })
final class CaseInventCommand implements Callable<Integer> {
  private static final int MOST = 999;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--count", paramLabel = "N", required = true, description = "How many, 1 to 999.")
  private int count;

  @Option(
      names = "--seed",
      paramLabel = "N",
      required = true,
      description = "What chance comes from, a whole number from 0.")
  private long seed;

  @Option(
      names = "--until",
      paramLabel = "DATE",
      description = "The last day of a case; today if not given.")
  private Optional<LocalDate> until = Optional.empty();

  CaseInventCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (count < 1 || count > MOST || seed < 0) {
      throw new Failure(
          ExitCode.USAGE, "--count is a number from 1 to " + MOST + ", and --seed one from 0");
    }
    WorkspaceFolders folders = session.foldersToWrite(workspace.folder());
    Workspace read = session.workspace(folders);
    List<RecordedCase> cases =
        new CaseInventor(read.library(), seed, until.orElse(session.today())).cases(count);
    CaseWriter writer = new CaseWriter(folders);
    int written = 0;
    for (RecordedCase each : cases) {
      CaseWriter.Outcome outcome = writer.keep(read.library(), each);
      if (outcome instanceof CaseWriter.Refused refused) {
        throw new Failure(ExitCode.IO, refused.problem().toString());
      }
      written += ((CaseWriter.Written) outcome).before().isEmpty() ? 1 : 0;
    }
    session
        .out()
        .println(
            CountWords.of(written, "case")
                + " written, "
                + (cases.size() - written)
                + " were there already; all are invented");
    return ExitCode.OK;
  }
}
