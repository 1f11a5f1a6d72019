package limberboard.findings;

import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * The one step that mends what is wrong, where it is certain. Immutable; not for the event thread.
 */
public sealed interface Repair permits FileRepair, FigureRepair {
  /** The repair of a problem; empty where none is certain. */
  static Optional<Repair> of(Problem problem, Library library) {
    return LinkRepair.of(problem, library)
        .<Repair>map(link -> link)
        .or(() -> FigureRepair.of(problem, library));
  }

  /** What it does, in a sentence. */
  String words();

  /**
   * Makes it.
   *
   * @return why it could not be made
   */
  Optional<Problem> make(WorkspaceFolders folders);
}
