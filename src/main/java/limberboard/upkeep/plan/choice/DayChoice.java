package limberboard.upkeep.plan.choice;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which chores are done, and on which days.
 *
 * @param days for each chore the number of its day; -1 when it is left undone
 * @param worth what all that is done is worth
 * @param most no choice at all is worth more: proven, not estimated
 * @param steps how much was looked at
 */
public record DayChoice(List<Integer> days, long worth, long most, long steps) {
  /** Copies the list. */
  public DayChoice {
    days = List.copyOf(days);
  }

  /** Whether it is proven that no choice is worth more. */
  public boolean isBest() {
    return worth == most;
  }

  /** The chores that are done. */
  public List<Integer> done() {
    return IntStream.range(0, days.size()).filter(i -> days.get(i) >= 0).boxed().toList();
  }

  /** The chores that are done, as a set. */
  BitSet doneSet() {
    BitSet set = new BitSet();
    done().forEach(set::set);
    return set;
  }
}
