package limberboard.boat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import limberboard.library.file.FileBytes;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/** Finds the files of boats and cases, and says of those that would be passed over why. */
final class BoatFolders {
  private static final String CASES = "cases";
  private static final String CASE = ".yaml";
  private static final List<String> NAMES =
      List.of(BoatReader.BOAT, BoatReader.LOG, StockReader.STOCK);

  private final WorkspaceFolders folders;
  private final List<Problem> problems;

  /**
   * Looks into a workspace.
   *
   * @param problems takes what is wrong
   */
  BoatFolders(WorkspaceFolders folders, List<Problem> problems) {
    this.folders = folders;
    this.problems = problems;
  }

  /** The folders with a boat in them, by name. */
  List<Path> boats() {
    List<Path> boats = new ArrayList<>();
    for (Path folder : listed(folders.boats())) {
      String name = folder.getFileName().toString();
      if (Files.isDirectory(folder) && !name.startsWith(".") && !name.equals(CASES)) {
        List<String> files =
            listed(folder).stream().map(file -> file.getFileName().toString()).toList();
        names(folder, files);
        if (FileBytes.isThere(folder.resolve(BoatReader.BOAT))) {
          boats.add(folder);
        }
      }
    }
    return boats;
  }

  /** Says of files that are nearly named as they must be that nobody reads them. */
  private void names(Path folder, List<String> files) {
    for (String wanted : NAMES) {
      if (FileBytes.isThere(folder.resolve(wanted))) {
        continue;
      }
      files.stream()
          .filter(file -> file.toLowerCase(Locale.ROOT).equals(wanted))
          .forEach(
              file ->
                  wrong(folder.resolve(file), "is not read under this name", "name it " + wanted));
    }
    boolean boat = files.stream().anyMatch(BoatReader.BOAT::equalsIgnoreCase);
    if (!boat && files.contains(BoatReader.LOG)) {
      wrong(
          folder.resolve(BoatReader.LOG),
          "belongs to no boat, because there is no " + BoatReader.BOAT + " beside it",
          "write one, or move the log to its boat");
    }
  }

  /** The files of cases, by name. */
  List<Path> cases() {
    List<Path> cases = new ArrayList<>();
    for (Path file : listed(folders.cases())) {
      String name = file.getFileName().toString();
      String lower = name.toLowerCase(Locale.ROOT);
      if (name.startsWith(".")) {
        continue;
      }
      if (name.endsWith(CASE)) {
        cases.add(file);
      } else if (lower.endsWith(CASE) || lower.endsWith(".yml")) {
        wrong(file, "is not read under this name", "let its name end in " + CASE);
      }
    }
    return cases;
  }

  private void wrong(Path file, String wrong, String right) {
    problems.add(Problem.error(folders.relative(file), 0, "", wrong, right));
  }

  private List<Path> listed(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      wrong(folder, "may not be looked into", "change its permissions so that you may read it");
      return List.of();
    }
  }
}
