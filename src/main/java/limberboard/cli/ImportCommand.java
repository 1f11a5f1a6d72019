package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.Recorder;
import limberboard.library.file.WorkspaceFolders;
import limberboard.moving.Archive;
import limberboard.moving.ArchiveTrouble;
import limberboard.moving.Import;
import limberboard.moving.ImportPlan;
import limberboard.moving.PendingImport;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import}: brings a zip file into the workspace. */
@Command(
    name = "import",
    mixinStandardHelpOptions = true,
    description = {
      "Says what a zip file of pages and boats would change; with --yes it does so, all or"
          + " nothing.",
      "Pages whose header says whose own they are stay as they are."
    })
final class ImportCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private HistoryOptions options;

  @Parameters(paramLabel = "FILE.zip", description = "The zip file.")
  private Path file;

  @Option(names = "--yes", description = "Do it.")
  private boolean yes;

  @Option(
      names = "--replace",
      description = "Replace files also where no history keeps what they held.")
  private boolean replace;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  ImportCommand(CommandContext session) {
    this.session = session;
  }

  /** What {@code --json} prints. */
  record View(boolean done, ImportPlan plan) {}

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = options.folders(session);
    try (HistoryFolder place = HistoryFolder.of(folders).orElse(null)) {
      new PendingImport(folders).goOn();
      Import bringing = new Import(folders, Archive.read(session.folder().resolve(file)));
      ImportPlan plan = bringing.plan();
      boolean done = yes && plan.changesAnything();
      if (done) {
        bring(bringing, plan, Optional.ofNullable(place));
      }
      say(plan, done);
      return ExitCode.OK;
    } catch (ArchiveTrouble | HistoryTrouble trouble) {
      throw Failure.of(trouble);
    }
  }

  private void bring(Import bringing, ImportPlan plan, Optional<HistoryFolder> place)
      throws IOException {
    if (place.isEmpty()) {
      if (!plan.changed().isEmpty() && !replace) {
        throw new Failure(
            ExitCode.USAGE,
            CountWords.of(plan.changed().size(), "file")
                + " would be replaced and nothing keeps what they hold; limberboard history"
                + " --begin does, or write --replace. Nothing was changed");
      }
      bringing.apply(plan);
      return;
    }
    Recorder recorder = new Recorder(place.get());
    var author = options.author(place);
    recorder.record(recorder.unrecorded(), "As it stood before an import", author);
    bringing.apply(plan);
    recorder.record(recorder.unrecorded(), "Import " + file.getFileName(), author);
  }

  private void say(ImportPlan plan, boolean done) {
    if (json) {
      new JsonOutput(session.out()).print(new View(done, plan));
      return;
    }
    list(done ? "New:" : "Would be new:", plan.added());
    list(done ? "Changed:" : "Would be changed:", plan.changed());
    list("Stays, being somebody's own here:", plan.kept());
    list(done ? "To be mended now:" : "Would have to be mended then:", plan.problems());
    session.out().println(CountWords.of(plan.same(), "file") + " as here already.");
    if (!done && plan.changesAnything()) {
      session.out().println("Nothing was changed; --yes does it.");
    }
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      session.out().println(title);
      lines.forEach(line -> session.out().println("  " + line));
    }
  }
}
