package limberboard.desktop.upkeep.entry;

import java.util.List;
import limberboard.boat.LogChange;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWriter;
import limberboard.boat.LogWriter.Outcome;

/** Where boats' logs are kept. Called off the event thread. */
public interface LogStore {
  /**
   * Adds entries to a boat's log, all of them or none.
   *
   * @param boat the boat's id
   * @param entries at least one
   */
  Outcome add(String boat, List<LogEntry> entries);

  /**
   * Corrects an entry in its place.
   *
   * @param boat the boat's id
   */
  Outcome replace(String boat, LogEntry old, LogEntry now);

  /**
   * Takes an entry out.
   *
   * @param boat the boat's id
   */
  Outcome remove(String boat, LogEntry entry);

  /**
   * Takes a change back.
   *
   * @return what was changed by that; taking it back makes the first change again
   */
  Outcome takeBack(LogChange change);

  /** The logs of a workspace. */
  static LogStore of(LogWriter book) {
    return new LogStore() {
      @Override
      public Outcome add(String boat, List<LogEntry> entries) {
        return book.add(boat, entries);
      }

      @Override
      public Outcome replace(String boat, LogEntry old, LogEntry now) {
        return book.replace(boat, old, now);
      }

      @Override
      public Outcome remove(String boat, LogEntry entry) {
        return book.remove(boat, entry);
      }

      @Override
      public Outcome takeBack(LogChange change) {
        return book.undo(change);
      }
    };
  }
}
