package limberboard.upkeep.plan.choice;

import java.util.Set;
import java.util.TreeSet;

/**
 * One piece of work as numbers.
 *
 * @param minutes what it takes, without opening anything; at least 0
 * @param worth what doing it is worth; at least 0
 * @param after numbers of the chores that must be done before it, on the same day or earlier
 * @param opens numbers of everything that must stand open for it, with all that this needs
 * @param firstDay number of the first day on which it can be done
 * @param lastDay number of the last day on which it can be done; before {@code firstDay} when it
 *     cannot be done at all
 * @param stage chores of a lower stage are done before those of a higher one; {@link #ANY_STAGE}
 *     for one that can be done before, between and after them
 * @param behind numbers of the chores that come before it where they are done at all
 */
public record Chore(
    int minutes,
    long worth,
    Set<Integer> after,
    Set<Integer> opens,
    int firstDay,
    int lastDay,
    int stage,
    Set<Integer> behind) {
  /** Between all stages. */
  public static final int ANY_STAGE = -1;

  /** A chore that is behind nothing but what must be done before it. */
  public Chore(
      int minutes,
      long worth,
      Set<Integer> after,
      Set<Integer> opens,
      int firstDay,
      int lastDay,
      int stage) {
    this(minutes, worth, after, opens, firstDay, lastDay, stage, Set.of());
  }

  /** Copies the sets. */
  public Chore {
    behind = Set.copyOf(behind);
    after = Set.copyOf(after);
    opens = Set.copyOf(opens);
    if (minutes < 0 || worth < 0 || firstDay < 0 || stage < ANY_STAGE) {
      throw new IllegalArgumentException("no number of a chore is below zero");
    }
  }

  /** All that come before it, whether they must be done or not. */
  Set<Integer> earlier() {
    Set<Integer> earlier = new TreeSet<>(after);
    earlier.addAll(behind);
    return earlier;
  }

  /** Its numbers of {@link #opens}, from the lowest. */
  Set<Integer> openings() {
    return new TreeSet<>(opens);
  }
}
