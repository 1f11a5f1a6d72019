package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pictures}: makes the pictures of the window that the documentation shows. */
@Command(
    name = "pictures",
    mixinStandardHelpOptions = true,
    description = "Makes the pictures of the window, light and dark. Needs a display.")
final class PicturesCommand implements Callable<Integer> {
  private final CommandContext session;
  private final Terminal.Window window;
  @Mixin private WorkspaceOption workspace;

  private static final Pattern SIZE = Pattern.compile("([1-9][0-9]{2,3})x([1-9][0-9]{2,3})");

  @Option(names = "--to", paramLabel = "FOLDER", required = true, description = "Where to.")
  private Path to;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      defaultValue = "1280x800",
      description = "The window's size in pixels; usually ${DEFAULT-VALUE}.")
  private String size;

  @Option(
      names = "--text",
      paramLabel = "PERCENT",
      defaultValue = "100",
      description = "Text size in per cent, 100 to 200; usually ${DEFAULT-VALUE}.")
  private int textPercent;

  PicturesCommand(CommandContext session, Terminal.Window window) {
    this.session = session;
    this.window = window;
  }

  @Override
  public Integer call() throws IOException {
    Path folder = session.folder().resolve(to);
    if (!window.pictures(session.folders(workspace.folder()), session.today(), order(folder))) {
      throw new Failure(
          ExitCode.IO, "there is no display; run it under a virtual one, such as xvfb-run -a");
    }
    session.out().println("Written to " + folder);
    return ExitCode.OK;
  }

  private PictureOrder order(Path folder) {
    Matcher sides = SIZE.matcher(size);
    if (!sides.matches()) {
      throw new Failure(ExitCode.USAGE, "--size " + size + " is not a size; say 1280x800");
    }
    if (textPercent < 100 || textPercent > 200) {
      throw new Failure(ExitCode.USAGE, "--text " + textPercent + " is not from 100 to 200");
    }
    return new PictureOrder(
        folder, Integer.parseInt(sides.group(1)), Integer.parseInt(sides.group(2)), textPercent);
  }
}
