package limberboard.library.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;

/** Lists the folders of a workspace, and says what in them is overlooked or cannot be looked at. */
public final class FolderCheck {
  private static final String PICTURES = "pictures";

  private final WorkspaceFolders folders;

  /** A check of this workspace's folders. */
  public FolderCheck(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /**
   * What a folder holds, in order; nothing when it is not there.
   *
   * @param folder the folder
   * @param problems is told when the folder cannot be looked into
   */
  public List<Path> listed(Path folder, List<Problem> problems) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException | UncheckedIOException e) {
      problems.add(
          Problem.error(
              folders.relative(folder),
              0,
              "",
              e instanceof AccessDeniedException
                  ? "may not be looked into, so that nothing in it is used"
                  : "cannot be looked into, so that nothing in it is used",
              "change its permissions so that you may read it"));
      return List.of();
    }
  }

  /** Folders and pages below {@code articles} that belong to no kind. */
  public List<Problem> strangers() {
    List<Problem> problems = new ArrayList<>();
    List<String> known = new ArrayList<>(List.of(PICTURES));
    for (Kind kind : Kind.values()) {
      known.add(kind.folder());
    }
    for (Path path : listed(folders.articles(), problems)) {
      String name = path.getFileName().toString();
      if (name.startsWith(".") || known.contains(name)) {
        continue;
      }
      boolean folder = Files.isDirectory(path);
      if (folder || name.toLowerCase(Locale.ROOT).endsWith(".md")) {
        problems.add(
            Problem.warning(
                folders.relative(path),
                0,
                "",
                folder ? "is no folder of pages, and is not read" : "lies in no folder of pages",
                folder
                    ? Nearest.advice(name, known, "pages lie in " + String.join(", ", known))
                    : "move it into one of " + String.join(", ", known)));
      }
    }
    return problems;
  }

  /** What is odd about a file among the pages whose name does not end in {@code .md}. */
  public static Optional<Problem> notAPage(String path, String name) {
    boolean meant = name.toLowerCase(Locale.ROOT).matches(".*\\.(md|markdown|mdown|md\\.txt)");
    return meant
        ? Optional.of(
            Problem.warning(
                path, 0, "", "is not read", "let its name end in .md, in small letters"))
        : Optional.empty();
  }
}
