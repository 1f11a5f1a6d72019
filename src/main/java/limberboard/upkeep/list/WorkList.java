package limberboard.upkeep.list;

import java.util.List;
import java.util.stream.Stream;
import limberboard.boat.Fitting;
import limberboard.library.problem.Problem;

/**
 * All work of one list, in order.
 *
 * @param kind which list
 * @param fitting the boat on a day
 * @param parts the parts that have work, in order
 * @param problems what the pages say that cannot be kept
 */
public record WorkList(
    ListKind kind, Fitting fitting, List<ListPart> parts, List<Problem> problems) {
  /** Copies the lists. */
  public WorkList {
    parts = List.copyOf(parts);
    problems = List.copyOf(problems);
  }

  /** All lines, in order. */
  public Stream<ListLine> lines() {
    return parts.stream().flatMap(part -> part.lines().stream());
  }

  /** Minutes of the work itself. */
  public int workMinutes() {
    return parts.stream().mapToInt(ListPart::workMinutes).sum();
  }

  /** Minutes of opening and closing. */
  public double accessMinutes() {
    return parts.stream().mapToDouble(ListPart::accessMinutes).sum();
  }
}
