package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.BoatSystem;
import limberboard.moving.ArchiveTrouble;
import limberboard.moving.Export;
import limberboard.moving.ExportWish;
import limberboard.moving.PendingImport;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code export}: packs the workspace or a part of it. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = {
      "Packs the workspace, or a part of it, into a zip file that opens elsewhere.",
      "A part has the pages chosen with all that they refer to, their pictures and the words for"
          + " search; the whole has boats and cases too, and no letters."
    })
final class ExportCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--to", paramLabel = "FILE.zip", required = true, description = "The file.")
  private Path to;

  @Option(names = "--model", paramLabel = "MODEL", description = "Pages for boats of this model.")
  private Optional<String> model = Optional.empty();

  @Option(names = "--system", paramLabel = "SYSTEM", description = "Pages filed under this.")
  private Optional<String> system = Optional.empty();

  @Option(
      names = "--pages",
      paramLabel = "ID",
      split = ",",
      description = "These pages, with commas between.")
  private List<String> pages = List.of();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  ExportCommand(CommandContext session) {
    this.session = session;
  }

  /** What {@code --json} prints. */
  record View(List<String> files, Set<String> added, int bytes) {}

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = session.folders(workspace.folder());
    try {
      new PendingImport(folders).goOn();
      Export.Packed packed =
          new Export(folders, session.workspace(folders).library())
              .pack(new ExportWish(model, system.map(ExportCommand::system), pages));
      new OutFiles(session, folders, json).bytes(to, packed.bytes());
      if (json) {
        new JsonOutput(session.out())
            .print(new View(packed.files(), packed.added(), packed.bytes().length));
      } else {
        session
            .out()
            .println(
                CountWords.of(packed.files().size(), "file")
                    + (packed.added().isEmpty()
                        ? "."
                        : "; "
                            + CountWords.of(packed.added().size(), "page")
                            + " more than chosen, which they refer to."));
      }
      return ExitCode.OK;
    } catch (ArchiveTrouble trouble) {
      throw Failure.of(trouble);
    }
  }

  private static BoatSystem system(String word) {
    return Arrays.stream(BoatSystem.values())
        .filter(each -> each.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                Failure.unknown(
                    "system",
                    word,
                    Arrays.stream(BoatSystem.values()).map(BoatSystem::word).toList(),
                    "docs/file-formats.md names them"));
  }
}
