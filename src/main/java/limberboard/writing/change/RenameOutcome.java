package limberboard.writing.change;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import limberboard.library.problem.Problem;

/** What came of renaming a page. */
public sealed interface RenameOutcome {
  /**
   * It has its new id, everywhere.
   *
   * @param renaming what was renamed
   * @param places in which files the id was changed, and in how many places of each
   */
  record Renamed(Renaming renaming, Map<String, Integer> places) implements RenameOutcome {
    /** Copies the map, by file. */
    public Renamed {
      places = Collections.unmodifiableMap(new TreeMap<>(places));
    }
  }

  /**
   * It has the id that it had, everywhere.
   *
   * @param problems why, and what to do
   */
  record Refused(List<Problem> problems) implements RenameOutcome {
    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * It has its new id in some files and the old one in others, because files could not be written.
   * Nothing is lost; the next opening of the workspace goes on with it.
   *
   * @param renaming what is being renamed
   * @param problems why, and what to do
   */
  record Unfinished(Renaming renaming, List<Problem> problems) implements RenameOutcome {
    /** Copies the list. */
    public Unfinished {
      problems = List.copyOf(problems);
    }
  }
}
