package limberboard.upkeep.plan;

import java.util.List;

/**
 * A day of a plan.
 *
 * @param free the day, and how long there is
 * @param lines the work of the day, in order; none when the day stays free
 * @param opening minutes of opening and closing, as long as this person takes, each access once
 */
public record PlanDay(FreeDay free, List<PlanLine> lines, int opening) {
  /** Copies the list. */
  public PlanDay {
    lines = List.copyOf(lines);
  }

  /** Minutes of work and of opening and closing. */
  public int minutes() {
    return lines.stream().mapToInt(PlanLine::minutes).sum() + opening;
  }
}
