package limberboard.boat;

import java.util.Optional;
import limberboard.library.Problem;
import limberboard.library.WorkspaceFolders;

/**
 * Adds an entry to a boat's log or takes one out: a {@link LogBook} for one who takes nothing back.
 */
public final class LogWriter {
  private final LogBook book;

  /** A writer for this workspace. */
  public LogWriter(WorkspaceFolders folders) {
    this.book = new LogBook(folders);
  }

  /**
   * Adds an entry at the end of the boat's log, which is made if it is not there.
   *
   * @param boat the boat's id
   * @return why it was not written, if it was not
   */
  public Optional<Problem> add(String boat, LogEntry entry) {
    return problem(book.add(boat, entry));
  }

  /**
   * Takes the last line out that says what this entry says.
   *
   * @param boat the boat's id
   * @return why nothing was taken out, if so
   */
  public Optional<Problem> remove(String boat, LogEntry entry) {
    return problem(book.remove(boat, entry));
  }

  private static Optional<Problem> problem(LogBook.Outcome outcome) {
    return outcome instanceof LogBook.Refused refused
        ? Optional.of(refused.problem())
        : Optional.empty();
  }

  /** Whether a use may be counted under this name. */
  public static boolean mayBeCounted(String use) {
    return LogCount.name(use).good().isPresent();
  }
}
