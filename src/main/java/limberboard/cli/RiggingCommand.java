package limberboard.cli;

import java.util.concurrent.Callable;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.RiggingCsv;
import limberboard.print.sheet.RiggingSheet;
import limberboard.rigging.RunningRigging;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code rigging}: every rope of a boat, with its length, its thickness and the sums. */
@Command(
    name = "rigging",
    mixinStandardHelpOptions = true,
    description = {
      "Lists every rope of a boat: what it does, how long, how thick, of what, and the sums.",
      "As text if nothing else is asked for; --pdf for paper, --csv for a table."
    })
final class RiggingCommand implements Callable<Integer> {
  private static final int WIDTH = 120;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private ListOutput output;

  RiggingCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Fitting fitting =
        session
            .fitting(read, boat.id())
            .orElseThrow(
                () -> new Failure(ExitCode.USAGE, "say which boat's ropes are meant: --boat BOAT"));
    RunningRigging rigging = RunningRigging.of(read.library(), fitting);
    CutPage sheet = new RiggingSheet(read.library()).of(rigging);
    output.put(
        session,
        folders,
        new ListOutput.Forms(
            () -> sheet,
            () -> new RiggingCsv().render(rigging),
            () -> RiggingView.of(rigging),
            () -> sheet,
            WIDTH));
    return ExitCode.OK;
  }
}
