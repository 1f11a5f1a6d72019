package limberboard.boat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * Questions what a boat's files date later than today: work is logged once it is done, and a boat
 * is bought once it is paid for.
 */
public final class FutureEntries {
  private final WorkspaceFolders folders;
  private final LocalDate today;

  /** Questions for this day. */
  public FutureEntries(WorkspaceFolders folders, LocalDate today) {
    this.folders = folders;
    this.today = today;
  }

  /** A warning for each day in the boat's files that lies in the future; they are not counted. */
  public List<Problem> of(Boat boat) {
    Path folder = folders.boats().resolve(boat.id());
    List<Problem> questions = new ArrayList<>();
    boat.bought()
        .filter(day -> day.isAfter(today))
        .ifPresent(day -> questions.add(question(folder.resolve(BoatReader.BOAT), day)));
    String log = folders.relative(folder.resolve(BoatReader.LOG));
    boat.log().stream()
        .filter(entry -> entry.date().isAfter(today))
        .forEach(entry -> questions.add(question(log, entry)));
    return List.copyOf(questions);
  }

  private Problem question(Path file, LocalDate bought) {
    List<String> lines =
        TextFile.read(folders, file, TextFile.LARGEST).text().lines().map(String::strip).toList();
    int line = 0;
    for (int i = 0; i < lines.size() && line == 0; i++) {
      line = lines.get(i).startsWith("bought") ? i + 1 : 0;
    }
    return Problem.warning(
        folders.relative(file),
        line,
        "bought",
        bought + " lies in the future (today is " + today + "), and is not counted yet",
        "correct the year, or write it once she is yours");
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
