package limberboard.boat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.file.FileBytes;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.problem.Problem;

/** Reads the boats' folders one after another: {@code boat.yaml} and {@code log.csv} of each. */
final class BoatReader {
  static final String BOAT = "boat.yaml";
  static final String LOG = "log.csv";

  private final WorkspaceFolders folders;
  private final BoatText texts;
  private final LogReader logs;
  private final Map<String, String> hulls = new HashMap<>();

  BoatReader(WorkspaceFolders folders, Library library, HeaderBinder binder) {
    this.folders = folders;
    this.texts = new BoatText(library, binder);
    this.logs = new LogReader(folders, library);
  }

  /** A boat, if it can be used, with what is wrong in its files. */
  record Read(Optional<Boat> boat, List<Problem> problems) {}

  /** Reads the boat in a folder. */
  Read read(Path folder) {
    String file = folders.relative(folder.resolve(BOAT));
    TextFile.Result text = TextFile.read(folders, folder.resolve(BOAT), TextFile.LARGEST);
    if (!text.problems().isEmpty()) {
      return new Read(Optional.empty(), text.problems());
    }
    BoatText.Read read = texts.read(folder.getFileName().toString(), file, text.text());
    List<Problem> problems = new ArrayList<>(read.problems());
    read.boat().flatMap(boat -> sameHull(boat, file, read.hullLine())).ifPresent(problems::add);
    return new Read(read.boat().map(boat -> logged(boat, folder, problems)), problems);
  }

  /** Each hull of a model is one boat. */
  private Optional<Problem> sameHull(Boat boat, String file, int line) {
    String other = hulls.putIfAbsent(boat.model().id() + " " + boat.hull(), boat.id());
    return Optional.ofNullable(other)
        .map(
            id ->
                Problem.error(
                    file,
                    line,
                    "hull",
                    boat.hull() + " is the hull number of " + id + " too",
                    "correct the one that is wrong; each boat of a model has its own"));
  }

  private Boat logged(Boat boat, Path folder, List<Problem> problems) {
    Path log = folder.resolve(LOG);
    if (!FileBytes.isThere(log)) {
      return boat;
    }
    LogReader.Read read = logs.read(log);
    problems.addAll(read.problems());
    return boat.with(read.entries());
  }
}
