package limberboard.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.problem.Problem;

/**
 * An immutable snapshot of a workspace: its library, boats and cases.
 *
 * @param library the pages
 * @param boats the boats that could be read, by id
 * @param stocks what is in the boats' stocks, by the boat's id; a boat without a stock file is
 *     absent
 * @param cases recorded cases, by id
 * @param problems everything wrong in the workspace's files, the library's included
 */
public record Workspace(
    Library library,
    List<Boat> boats,
    Map<String, Stock> stocks,
    List<RecordedCase> cases,
    List<Problem> problems) {
  /** Copies the collections. */
  public Workspace {
    boats = List.copyOf(boats);
    stocks = Map.copyOf(stocks);
    cases = List.copyOf(cases);
    problems = List.copyOf(problems);
  }

  /** A workspace without stores. */
  public Workspace(
      Library library, List<Boat> boats, List<RecordedCase> cases, List<Problem> problems) {
    this(library, boats, Map.of(), cases, problems);
  }

  /** The same workspace, of which more is wrong. */
  public Workspace with(List<Problem> more) {
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(more);
    return new Workspace(library, boats, stocks, cases, all);
  }

  /** The boat with this id: one of the boats, or one that nobody has entered. */
  public Optional<Boat> boat(String id) {
    return boats.stream()
        .filter(boat -> boat.id().equals(id))
        .findFirst()
        .or(() -> NotEntered.of(id, library));
  }

  /** What is in a boat's stock; nothing where it has no stock file. */
  public Stock stock(Boat boat) {
    return stocks.getOrDefault(boat.id(), Stock.NONE);
  }
}
