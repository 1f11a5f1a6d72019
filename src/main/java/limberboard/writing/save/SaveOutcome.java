package limberboard.writing.save;

import java.util.List;
import java.util.Optional;
import limberboard.library.problem.Problem;
import limberboard.writing.PageText;

/** What came of saving a page. */
public sealed interface SaveOutcome {
  /**
   * The file holds it.
   *
   * @param page what was written
   */
  record Saved(PageText page) implements SaveOutcome {}

  /**
   * The file has changed since it was opened, and nothing was written.
   *
   * @param mine what was to be written
   * @param theirs what the file holds; empty when it is gone
   * @param differences where the two differ
   */
  record Changed(PageText mine, Optional<PageText> theirs, List<LineDifference> differences)
      implements SaveOutcome {
    /** Copies the list. */
    public Changed {
      differences = List.copyOf(differences);
    }
  }

  /**
   * It could not be written; the file is as it was.
   *
   * @param problem why, and what to do
   */
  record Refused(Problem problem) implements SaveOutcome {}
}
