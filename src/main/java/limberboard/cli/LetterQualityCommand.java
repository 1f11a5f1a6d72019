package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import limberboard.letters.recognise.LetterQuality;
import limberboard.letters.recognise.RecordedLetter;
import limberboard.letters.recognise.Teaching;
import limberboard.library.file.WorkspaceFolders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code letter-quality}: how well letters are recognised. */
@Command(
    name = "letter-quality",
    mixinStandardHelpOptions = true,
    description = {
      "Says how well letters are recognised, for a folder of letters NAME.eml each with what it"
          + " should give in NAME.yaml beside it.",
      "A letter that the workspace has learnt from is tried by what the others taught."
    })
final class LetterQualityCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      description = "The folder; the workspace's letters if not given.")
  private Path folder;

  @Option(names = "--misses", description = "List the letters that were not recognised rightly.")
  private boolean misses;

  @Option(
      names = "--coefficients",
      description = "Print instead the coefficients that the workspace's letters teach.")
  private boolean coefficients;

  LetterQualityCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Teaching teaching = new Teaching(folders, session.workspace(folders), session.today());
    if (coefficients) {
      teaching.coefficients().forEach(session.out()::println);
      return ExitCode.OK;
    }
    Path asked = folder == null ? folders.letters() : session.folder().resolve(folder);
    List<RecordedLetter> letters = RecordedLetter.read(asked);
    if (letters.isEmpty()) {
      throw new Failure(
          ExitCode.NOT_FOUND, "there is no letter NAME.eml with NAME.yaml beside it in " + asked);
    }
    LetterQuality quality = teaching.quality(letters);
    session.out().print(misses ? quality.misses() + quality.text() : quality.text());
    return ExitCode.OK;
  }
}
