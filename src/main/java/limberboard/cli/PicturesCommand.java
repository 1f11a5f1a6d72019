package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pictures}: makes the pictures of the window that the documentation shows. */
@Command(
    name = "pictures",
    mixinStandardHelpOptions = true,
    description = "Makes the pictures of the window, light and dark. Needs a display.")
final class PicturesCommand implements Callable<Integer> {
  private final Session session;
  private final Terminal.Window window;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--to", paramLabel = "FOLDER", required = true, description = "Where to.")
  private Path to;

  PicturesCommand(Session session, Terminal.Window window) {
    this.session = session;
    this.window = window;
  }

  @Override
  public Integer call() throws IOException {
    Path folder = session.folder().resolve(to);
    if (!window.pictures(session.folders(workspace.folder()), session.today(), folder)) {
      throw new Failure(
          ExitCode.IO, "there is no display; run it under a virtual one, such as xvfb-run -a");
    }
    session.out().println("Written to " + folder);
    return ExitCode.OK;
  }
}
