package limberboard.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/** What a boat's own files leave to ask of whoever keeps them. */
public final class BoatQuestions {
  private final WorkspaceFolders folders;
  private final FutureEntries future;

  /**
   * Questions on a day.
   *
   * @param folders where the files lie
   * @param today the day after which an entry lies in the future
   */
  public BoatQuestions(WorkspaceFolders folders, LocalDate today) {
    this.folders = folders;
    this.future = new FutureEntries(folders, today);
  }

  /** What could not be read in the boat's files, what does not go together, what is to come. */
  public List<Problem> of(Workspace read, Boat boat) {
    String folder = folders.relative(folders.boats().resolve(boat.id())) + "/";
    List<Problem> doubts = new ArrayList<>();
    read.problems().stream()
        .filter(problem -> problem.file().startsWith(folder))
        .forEach(doubts::add);
    doubts.addAll(future.of(boat));
    return List.copyOf(doubts);
  }
}
