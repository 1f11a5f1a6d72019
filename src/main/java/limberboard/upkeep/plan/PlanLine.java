package limberboard.upkeep.plan;

import java.util.List;
import limberboard.upkeep.list.ListLine;

/**
 * A line of a plan.
 *
 * @param line the work in its place in the day, with what is opened and closed
 * @param work what is due and done with it
 * @param also other due work that this does as well, so that it need not be done by itself
 * @param minutes what it takes this person, without opening anything
 */
public record PlanLine(ListLine line, DueWork work, List<DueWork> also, int minutes) {
  /** Copies the list. */
  public PlanLine {
    also = List.copyOf(also);
  }
}
