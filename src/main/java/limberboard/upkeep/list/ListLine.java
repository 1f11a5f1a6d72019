package limberboard.upkeep.list;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Model.Zone;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.upkeep.Task;

/**
 * One line of a list.
 *
 * @param number its number on the list, from 1
 * @param task the work and why it is here
 * @param zone where the boat has it; empty when its page names no place that this boat has
 * @param open what is opened just before it, in order
 * @param close what is closed just after it, in order
 * @param moved why it stands in a later part than its own; empty when it does not
 */
public record ListLine(
    int number,
    Task task,
    Optional<Zone> zone,
    List<Access> open,
    List<Access> close,
    Optional<Moved> moved) {
  /** Copies the lists. */
  public ListLine {
    open = List.copyOf(open);
    close = List.copyOf(close);
  }

  /** The procedure. */
  public Page<Procedure> work() {
    return task.work();
  }

  /** Minutes that it asks of the owner, practised; of a round, with all that is done with it. */
  public int minutes() {
    return task.minutes();
  }

  /**
   * Work that waits for a later part.
   *
   * @param from the part in which it would stand by itself
   * @param after the title of the work of the later part that comes before it
   */
  public record Moved(limberboard.library.value.Phase from, String after) {}
}
