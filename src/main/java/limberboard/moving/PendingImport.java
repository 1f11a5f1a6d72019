package limberboard.moving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.WorkspaceFolders;

/**
 * An import on its way: all files lie in a hidden folder of the workspace first, then a note says
 * that they are whole, and only then each goes to its place. Who is killed before the note has
 * changed nothing; who is killed after it is gone on with.
 */
public final class PendingImport {
  private static final String FOLDER = ".import";
  private static final String READY = "ready";

  private final WorkspaceFolders folders;
  private final Path folder;

  /** The import that may be on its way in this workspace. */
  public PendingImport(WorkspaceFolders folders) {
    this.folders = folders;
    this.folder = folders.root().resolve(FOLDER);
  }

  void write(Map<String, byte[]> files) throws IOException {
    goOn();
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        SafeFiles.write(folder.resolve("files").resolve(file.getKey()), file.getValue());
      }
      SafeFiles.write(folder.resolve(READY), String.join("\n", files.keySet()) + "\n");
    } catch (IOException e) {
      delete(folder);
      throw new ArchiveTrouble(
          "the files could not be written: " + FileTrouble.reason(e),
          "mend that and try again; nothing was changed");
    }
    goOn();
  }

  /**
   * Finishes an import that was killed, or clears away one that had not begun.
   *
   * @return how many files were brought to their places
   * @throws ArchiveTrouble when one cannot be written; the next try goes on there
   */
  public int goOn() throws IOException {
    if (!Files.isDirectory(folder)) {
      return 0;
    }
    int done = 0;
    if (Files.isRegularFile(folder.resolve(READY))) {
      List<String> paths =
          Files.readString(folder.resolve(READY), StandardCharsets.UTF_8).lines().toList();
      for (String path : paths) {
        Path from = folder.resolve("files").resolve(path);
        if (ArchiveName.wrong(path).isEmpty() && Files.isRegularFile(from)) {
          place(path, from);
          done++;
        }
      }
    }
    delete(folder);
    return done;
  }

  /**
   * Finishes an import that was killed after its files were whole; one that had not begun to change
   * anything is left, since somebody may be at it at this moment.
   *
   * @return how many files were brought to their places
   * @throws ArchiveTrouble when one cannot be written; the next try goes on there
   */
  public int finish() throws IOException {
    return Files.isRegularFile(folder.resolve(READY)) ? goOn() : 0;
  }

  private void place(String path, Path from) throws IOException {
    try {
      SafeFiles.write(folders.root().resolve(path), Files.readAllBytes(from));
      Files.delete(from);
    } catch (IOException e) {
      throw new ArchiveTrouble(
          path + " could not be written: " + FileTrouble.reason(e),
          "mend that; the next import or export goes on where this one stopped");
    }
  }

  /** Takes away a folder with all that is in it; the note of an import first. */
  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    Files.deleteIfExists(folder.resolve(READY));
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    }
  }
}
