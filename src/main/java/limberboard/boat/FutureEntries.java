package limberboard.boat;

import java.time.LocalDate;
import java.util.List;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/** Questions log entries that are dated later than today: work is logged once it is done. */
public final class FutureEntries {
  private final WorkspaceFolders folders;
  private final LocalDate today;

  /** Questions for this day. */
  public FutureEntries(WorkspaceFolders folders, LocalDate today) {
    this.folders = folders;
    this.today = today;
  }

  /** A warning for each of the boat's entries that lies in the future; they are not counted. */
  public List<Problem> of(Boat boat) {
    String file = folders.relative(folders.boats().resolve(boat.id()).resolve(BoatReader.LOG));
    return boat.log().stream()
        .filter(entry -> entry.date().isAfter(today))
        .map(entry -> question(file, entry))
        .toList();
  }

  private Problem question(String file, LogEntry entry) {
    return Problem.warning(
        file,
        entry.line(),
        LogWords.DATE,
        entry.date() + " lies in the future (today is " + today + "), and is not counted yet",
        "correct the year, or log the work once it is done");
  }
}
