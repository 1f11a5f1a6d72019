package limberboard.desktop.upkeep;

import java.util.List;
import limberboard.boat.LogChange;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWriter.Outcome;
import limberboard.boat.LogWriter.Refused;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.library.problem.Problem;

/** Logs that cannot be written. */
public final class FullDisk implements LogStore {
  private static final Outcome REFUSED =
      new Refused(Problem.error("the log", 0, "", "there is no space left", ""));

  @Override
  public Outcome add(String boat, List<LogEntry> entries) {
    return REFUSED;
  }

  @Override
  public Outcome replace(String boat, LogEntry old, LogEntry now) {
    return REFUSED;
  }

  @Override
  public Outcome remove(String boat, LogEntry entry) {
    return REFUSED;
  }

  @Override
  public Outcome takeBack(LogChange change) {
    return REFUSED;
  }
}
