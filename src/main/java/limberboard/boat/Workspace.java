package limberboard.boat;

import java.util.List;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.Problem;

/**
 * An immutable snapshot of a workspace: its library, boats and cases.
 *
 * @param library the pages
 * @param boats the boats that could be read, by id
 * @param cases recorded cases, by id
 * @param problems everything wrong in the workspace's files, the library's included
 */
public record Workspace(
    Library library, List<Boat> boats, List<RecordedCase> cases, List<Problem> problems) {
  /** Copies the lists. */
  public Workspace {
    boats = List.copyOf(boats);
    cases = List.copyOf(cases);
    problems = List.copyOf(problems);
  }

  /** The boat with this id. */
  public Optional<Boat> boat(String id) {
    return boats.stream().filter(boat -> boat.id().equals(id)).findFirst();
  }
}
