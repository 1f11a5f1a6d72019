package limberboard.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.RiggingCsv;
import limberboard.print.sheet.RiggingSheet;
import limberboard.print.text.PlainText;
import limberboard.rigging.RunningRigging;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the list as A4 PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--csv", paramLabel = "FILE", description = "Write the list as CSV (RFC 4180).")
  private Optional<Path> csv = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

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
    csv.ifPresent(
        file -> write(file, new RiggingCsv().render(rigging).getBytes(StandardCharsets.UTF_8)));
    pdf.ifPresent(file -> write(file, paper(sheet, folders)));
    if (json) {
      new JsonOutput(session.out()).print(RiggingView.of(rigging));
    } else if (csv.isEmpty() && pdf.isEmpty()) {
      session.out().println(new PlainText().render(sheet, WIDTH));
    }
    return ExitCode.OK;
  }

  private static byte[] paper(CutPage sheet, WorkspaceFolders folders) {
    try {
      return Paper.pdf(sheet, folders);
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, "the list cannot be laid out as PDF: " + e.getMessage());
    }
  }

  /** With {@code --json} only JSON goes to the output, so that it can be read by a program. */
  private void write(Path asked, byte[] bytes) {
    OutFile.write(session, asked, bytes, json);
  }
}
