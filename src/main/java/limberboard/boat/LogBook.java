package limberboard.boat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.library.Problem;
import limberboard.library.SafeFiles;
import limberboard.library.WorkspaceFolders;

/**
 * Adds entries to boats' logs so that each can be taken out again exactly: the file is then as it
 * was, to the letter. When the file was changed by somebody else meanwhile, only the entry's own
 * line is taken out.
 */
public final class LogBook {
  private final WorkspaceFolders folders;
  private final LogWriter writer;

  /** The logs of this workspace. */
  public LogBook(WorkspaceFolders folders) {
    this.folders = folders;
    this.writer = new LogWriter(folders);
  }

  /** What came of adding an entry. */
  public sealed interface Outcome {}

  /**
   * It was written.
   *
   * @param boat the boat's id
   * @param entry what was written
   * @param before the file's text before; empty when there was none
   * @param after the file's text with the entry
   */
  public record Written(String boat, LogEntry entry, Optional<String> before, String after)
      implements Outcome {}

  /**
   * Nothing was written.
   *
   * @param problem why
   */
  public record Refused(Problem problem) implements Outcome {}

  /**
   * Adds an entry at the end of a boat's log.
   *
   * @param boat the boat's id
   * @throws IOException when it cannot be written; the old file is then still there, whole
   */
  public Outcome add(String boat, LogEntry entry) throws IOException {
    Path file = file(boat);
    Optional<String> before = text(file);
    Optional<Problem> problem = writer.add(boat, entry);
    return problem.isPresent()
        ? new Refused(problem.get())
        : new Written(boat, entry, before, text(file).orElse(""));
  }

  /**
   * Takes what was written out again.
   *
   * @return why nothing was taken out, if so
   * @throws IOException when it cannot be written; the old file is then still there, whole
   */
  public Optional<Problem> undo(Written written) throws IOException {
    Path file = file(written.boat());
    if (!text(file).equals(Optional.of(written.after()))) {
      return writer.remove(written.boat(), written.entry());
    }
    if (written.before().isPresent()) {
      SafeFiles.write(file, written.before().get());
    } else {
      Files.delete(file);
    }
    return Optional.empty();
  }

  private Path file(String boat) {
    return folders.boats().resolve(boat).resolve(BoatReader.LOG);
  }

  private static Optional<String> text(Path file) throws IOException {
    return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
  }
}
