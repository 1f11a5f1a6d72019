package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuality;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code search-quality}: how often search puts the right symptom first. */
@Command(
    name = "search-quality",
    mixinStandardHelpOptions = true,
    description = {
      "Says how often search puts the right symptom first, for a CSV file voice,phrase,symptom.",
      "The exit code is 1 when the shares are below --first or --first-three."
    })
final class SearchQualityCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "FILE", description = "The file of phrases.")
  private Path file;

  @Option(
      names = "--first",
      paramLabel = "SHARE",
      description = "The least share in first place, 0 to 1; 0.8 if not given.")
  private double first = 0.8;

  @Option(
      names = "--first-three",
      paramLabel = "SHARE",
      description = "The least share in the first three, 0 to 1; 0.95 if not given.")
  private double firstThree = 0.95;

  SearchQualityCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    try (SearchIndex index = SearchIndex.open(folders)) {
      index.update(read.library());
      SearchQuality quality =
          SearchQuality.measure(index, SearchQuality.read(session.folder().resolve(file)));
      session.out().print(quality.text());
      boolean enough = quality.firstShare() >= first && quality.firstThreeShare() >= firstThree;
      return enough ? ExitCode.OK : ExitCode.PROBLEMS;
    }
  }
}
