package limberboard.desktop.upkeep;

import java.io.IOException;
import java.util.Optional;
import limberboard.boat.LogBook;
import limberboard.boat.LogEntry;
import limberboard.library.Problem;

/** Where boats' logs are kept. Called off the event thread. */
public interface LogStore {
  /**
   * Adds an entry to a boat's log.
   *
   * @param boat the boat's id
   * @throws IOException when it cannot be written; the old log is then still there
   */
  LogBook.Outcome add(String boat, LogEntry entry) throws IOException;

  /**
   * Takes out again what was written.
   *
   * @return why nothing was taken out, if so
   * @throws IOException when it cannot be written; the old log is then still there
   */
  Optional<Problem> undo(LogBook.Written written) throws IOException;

  /** The logs of a workspace. */
  static LogStore of(LogBook book) {
    return new LogStore() {
      @Override
      public LogBook.Outcome add(String boat, LogEntry entry) throws IOException {
        return book.add(boat, entry);
      }

      @Override
      public Optional<Problem> undo(LogBook.Written written) throws IOException {
        return book.undo(written);
      }
    };
  }
}
