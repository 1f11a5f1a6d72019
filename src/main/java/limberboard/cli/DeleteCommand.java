package limberboard.cli;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.library.Library;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.words.CountWords;
import limberboard.writing.PageText;
import limberboard.writing.change.PageLinks;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code delete}: takes a page away, once it has been seen what names it. */
@Command(
    name = "delete",
    mixinStandardHelpOptions = true,
    description = {
      "Shows what names a page; with --yes the page is deleted.",
      "Its text is kept in your own state folder."
    })
final class DeleteCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "PAGE", description = "The page's id.")
  private String id;

  @Option(names = "--yes", description = "Delete it.")
  private boolean yes;

  @Option(names = "--json", description = "Print JSON: id, path, deleted, and links.")
  private boolean json;

  DeleteCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders =
        yes ? session.foldersToWrite(workspace.folder()) : session.folders(workspace.folder());
    Library library = session.workspace(folders).library();
    List<String> ids = library.pages().stream().<String>map(Page::id).toList();
    Page<?> page = library.page(id).orElseThrow(() -> Failure.unknown("page", id, ids, "try find"));
    List<PageLinks.Link> links = new PageLinks(folders).to(page);
    if (yes) {
      delete(folders, page);
    }
    if (json) {
      new JsonOutput(session.out()).print(new View(id, page.path(), yes, links));
      return ExitCode.OK;
    }
    session
        .out()
        .println(
            links.isEmpty()
                ? "Nothing names this page."
                : CountWords.of(links.size(), "place") + " name it:");
    links.forEach(link -> session.out().println(link.file() + ":" + link.line()));
    session
        .out()
        .println(
            yes
                ? "Deleted: " + page.path()
                : "Nothing was deleted; with --yes " + page.path() + " is.");
    return ExitCode.OK;
  }

  private static void delete(WorkspaceFolders folders, Page<?> page) throws IOException {
    PageFile file = new PageFile(folders, page.path());
    PageFile.Opened opened = file.open();
    if (opened instanceof PageFile.Unreadable bad) {
      throw new Failure(ExitCode.IO, bad.problem().toString());
    }
    Optional<PageText> text = ((PageFile.Ready) opened).page();
    if (text.isPresent()) {
      new KeptTexts(UserFolders.here(), folders)
          .keep(KeptText.of(page.path(), text, Clock.systemUTC().instant(), text.get()));
      SaveOutcome outcome = file.delete(text.get());
      if (outcome instanceof SaveOutcome.Refused refused) {
        throw new Failure(ExitCode.IO, refused.problem().toString());
      }
      if (outcome instanceof SaveOutcome.Changed) {
        throw new Failure(
            ExitCode.IO, page.path() + " has changed meanwhile; look again, nothing was deleted");
      }
    }
  }

  /** What {@code --json} prints. */
  record View(String id, String path, boolean deleted, List<PageLinks.Link> links) {}
}
