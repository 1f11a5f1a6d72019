package limberboard.upkeep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.LogEntry;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.LogEvents;

/** The demo workspace, and boats whose logs go on. */
final class Demo {
  private static final Workspace READ = read();

  private Demo() {}

  private static Workspace read() {
    try {
      return new WorkspaceReader(new WorkspaceFolders(Path.of("").toAbsolutePath())).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Workspace workspace() {
    return READ;
  }

  static Boat boat(String id) {
    return READ.boat(id).orElseThrow();
  }

  static Upkeep upkeep(Boat boat, LocalDate on) {
    return Upkeep.of(READ.library(), new Fitting(boat, on));
  }

  /** The boat with this log. */
  static Boat with(Boat boat, List<LogEntry> log) {
    List<LogEntry> sorted = new ArrayList<>(log);
    sorted.sort(Comparator.comparing(LogEntry::date));
    return boat.with(sorted);
  }

  /** The boat after what is due was done on a day. */
  static Boat done(Boat boat, List<Due> due, LocalDate on) {
    List<LogEntry> log = new ArrayList<>(boat.log());
    due.forEach(each -> log.add(entry(each, on)));
    return with(boat, log);
  }

  private static LogEntry entry(Due due, LocalDate on) {
    return new LogEntry(
        on,
        due.isLookAgain() ? LogEvents.LOOKED_AGAIN : due.id(),
        OptionalDouble.empty(),
        Map.of(),
        "",
        due.after().map(page -> page.id()),
        0);
  }

  /** By id, for the entries that are there. */
  static Optional<Due> find(Upkeep upkeep, String id) {
    return upkeep.all().stream().filter(due -> due.id().equals(id)).findFirst();
  }
}
