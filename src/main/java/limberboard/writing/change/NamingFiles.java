package limberboard.writing.change;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;

/**
 * The files of a workspace in which pages may be named: pages, boats with their logs and stock,
 * cases, what lies beside letters, and drills.
 *
 * @param folders the workspace
 */
record NamingFiles(WorkspaceFolders folders) {
  private static final int LARGEST_LOG = 8_000_000;
  private static final int DEEPEST_DRILL = 4;

  /** What a file is, as far as it decides where in it pages are named. */
  enum Sort {
    /** A page. */
    PAGE,
    /** A boat, its log or its stock. */
    BOAT,
    /** A case. */
    CASE,
    /** What is beside a letter. */
    LETTER,
    /** Drills. */
    DRILL
  }

  /**
   * A file.
   *
   * @param path where it lies
   * @param sort what it is
   * @param kind of a page, its kind
   */
  record NamingFile(Path path, Sort sort, Optional<Kind> kind) {
    /** How many bytes it may have. */
    int largest() {
      return path.toString().endsWith(".csv") ? LARGEST_LOG : TextFile.LARGEST;
    }
  }

  /**
   * All of them that really lie in the workspace, in order.
   *
   * @throws IOException when a folder cannot be looked into
   */
  List<NamingFile> all() throws IOException {
    List<NamingFile> files = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (Path page : listed(folders.articles().resolve(kind.folder()))) {
        if (page.toString().endsWith(".md")) {
          files.add(new NamingFile(page, Sort.PAGE, Optional.of(kind)));
        }
      }
    }
    for (Path boat : listed(folders.boats())) {
      add(files, listed(boat), Sort.BOAT, "boat.yaml", "log.csv", "stock.csv");
    }
    add(files, listed(folders.cases()), Sort.CASE, ".yaml");
    add(files, listed(folders.letters()), Sort.LETTER, ".yaml", ".state");
    Path drills = folders.root().resolve("drills");
    if (Files.isDirectory(drills)) {
      try (Stream<Path> below = Files.walk(drills, DEEPEST_DRILL)) {
        add(files, below.sorted().toList(), Sort.DRILL, ".yaml");
      }
    }
    files.removeIf(file -> !folders.holds(file.path()));
    return files;
  }

  private static void add(List<NamingFile> files, List<Path> from, Sort sort, String... endings) {
    for (Path file : from) {
      String name = file.getFileName().toString();
      if (Stream.of(endings).anyMatch(name::endsWith)
          && !name.startsWith(".")
          && Files.isRegularFile(file)) {
        files.add(new NamingFile(file, sort, Optional.empty()));
      }
    }
  }

  private static List<Path> listed(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> !file.getFileName().toString().startsWith(".")).sorted().toList();
    }
  }
}
