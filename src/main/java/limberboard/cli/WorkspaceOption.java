package limberboard.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --workspace}, shared by all commands. */
final class WorkspaceOption {
  @Option(
      names = "--workspace",
      paramLabel = "FOLDER",
      description =
          "The workspace's folder. Without it: the nearest folder upwards that has articles/.")
  private Optional<Path> folder = Optional.empty();

  Optional<Path> folder() {
    return folder;
  }
}
