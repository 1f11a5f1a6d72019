package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import limberboard.history.CopyRole;
import limberboard.history.HistoryTrouble;
import limberboard.library.value.Own;
import limberboard.sharing.Copying;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code share copy}: makes a first copy of a workspace. */
@Command(
    name = "copy",
    mixinStandardHelpOptions = true,
    description = {"Makes a first copy of a workspace that lies elsewhere, in a new folder."})
final class ShareCopyCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private ShareOptions share;

  @Parameters(
      index = "0",
      paramLabel = "ADDRESS",
      description = "Where it lies: a folder, ssh or https address.")
  private String address;

  @Parameters(index = "1", paramLabel = "FOLDER", description = "The new folder.")
  private Path folder;

  ShareCopyCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    Path target = ShareOptions.folder(session, folder);
    try {
      int files =
          new Copying(ShareOptions.connection(session))
              .copy(
                  ShareOptions.address(session, address),
                  target,
                  share.role().orElse(new CopyRole(Own.OWNER)));
      if (share.json()) {
        new JsonOutput(session.out()).print(new ShareView.Sent(0, 0, files));
      } else {
        session.out().println("Copied: " + CountWords.of(files, "file") + " into " + target);
      }
      return ExitCode.OK;
    } catch (HistoryTrouble trouble) {
      throw Failure.of(trouble);
    }
  }
}
