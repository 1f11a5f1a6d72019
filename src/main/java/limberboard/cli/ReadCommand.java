package limberboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;
import limberboard.print.text.PlainText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code read}: shows a page, cut to a boat if one is named. */
@Command(
    name = "read",
    mixinStandardHelpOptions = true,
    description = "Shows a page: for one boat with --boat, otherwise for all boats.")
final class ReadCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;

  @Parameters(paramLabel = "PAGE", description = "The page's id: its file name without .md.")
  private String id;

  @Option(names = "--json", description = "Print JSON: id, kind, title, path and the text.")
  private boolean json;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the page as an A4 PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(
      names = "--width",
      paramLabel = "N",
      description = "Characters a line, 40 to 200; 80 if not given.")
  private int width = 80;

  ReadCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (width < 40 || width > 200) {
      throw new Failure(ExitCode.USAGE, "--width is 40 to 200");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Page<?> page = page(read);
    CutPage cut = new PageCutter(read.library()).cut(page, session.fitting(read, boat.id()));
    if (pdf.isPresent()) {
      new OutFiles(session, folders, false).pdf(pdf.get(), cut);
      return ExitCode.OK;
    }
    String text = new PlainText().render(cut, width);
    if (json) {
      new JsonOutput(session.out())
          .print(new View(page.id(), page.kind().word(), page.title(), page.path(), text));
    } else {
      session.out().println(text);
    }
    return ExitCode.OK;
  }

  private Page<?> page(Workspace read) {
    return read.library()
        .page(id)
        .orElseThrow(
            () -> {
              List<String> ids = read.library().pages().stream().<String>map(Page::id).toList();
              return Failure.unknown("page", id, ids, "try find");
            });
  }

  /** What {@code --json} prints. */
  record View(String id, String kind, String title, String path, String text) {}
}
