package limberboard.upkeep.list;

import java.util.List;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Phase;

/**
 * The work of one phase, in the order it is done.
 *
 * @param phase when in the year
 * @param lines the work, at least one line
 * @param bestProven whether no other order is proven to keep access open for less time, or as long
 *     with less walking
 */
public record ListPart(Phase phase, List<ListLine> lines, boolean bestProven) {
  /** Copies the list. */
  public ListPart {
    lines = List.copyOf(lines);
  }

  /** Minutes of the work itself. */
  public int workMinutes() {
    return lines.stream().mapToInt(ListLine::minutes).sum();
  }

  /** Minutes of opening and closing, each access once. */
  public double accessMinutes() {
    return lines.stream().flatMap(line -> line.open().stream()).mapToDouble(Access::minutes).sum();
  }
}
