package limberboard.upkeep.plan.choice;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Days being filled with chores: how much of each day is taken, and what stands open on it. Each
 * access is opened once on each day on which it is needed. For one thread.
 */
final class DayFill {
  static final int NONE = -1;

  private final Chores chores;
  private final int[] dayOf;
  private final long[] taken;
  private final int[][] users;
  private final int[][] opens;

  DayFill(Chores chores) {
    this.chores = chores;
    dayOf = new int[chores.size()];
    Arrays.fill(dayOf, NONE);
    taken = new long[chores.days().size()];
    users = new int[taken.length][chores.openings().size()];
    opens = new int[chores.size()][];
    for (int i = 0; i < opens.length; i++) {
      opens[i] = chores.chore(i).opens().stream().mapToInt(Integer::intValue).sorted().toArray();
    }
  }

  /** The same days, filled the same way, to go on with. */
  DayFill copy() {
    DayFill copy = new DayFill(chores);
    for (int chore = 0; chore < dayOf.length; chore++) {
      if (dayOf[chore] != NONE) {
        copy.place(chore, dayOf[chore]);
      }
    }
    return copy;
  }

  /** Minutes of opening that a chore adds to a day. */
  long opening(int chore, int day) {
    long sum = 0;
    for (int opening : opens[chore]) {
      sum += users[day][opening] == 0 ? chores.opening(opening) : 0;
    }
    return sum;
  }

  /** Minutes that are left of a day. */
  long left(int day) {
    return chores.days().get(day) - taken[day];
  }

  /** Whether a chore fits into what is left of a day. */
  boolean fits(int chore, int day) {
    return chores.chore(chore).minutes() + opening(chore, day) <= left(day);
  }

  void place(int chore, int day) {
    taken[day] += chores.chore(chore).minutes() + opening(chore, day);
    for (int opening : opens[chore]) {
      users[day][opening]++;
    }
    dayOf[chore] = day;
  }

  void remove(int chore) {
    int day = dayOf[chore];
    for (int opening : opens[chore]) {
      users[day][opening]--;
    }
    taken[day] -= chores.chore(chore).minutes() + opening(chore, day);
    dayOf[chore] = NONE;
  }

  /** The day of a chore, or {@link #NONE}. */
  int dayOf(int chore) {
    return dayOf[chore];
  }

  /** The chores that have a day. */
  BitSet placed() {
    BitSet placed = new BitSet();
    for (int i = 0; i < dayOf.length; i++) {
      placed.set(i, dayOf[i] != NONE);
    }
    return placed;
  }

  int[] days() {
    return dayOf.clone();
  }
}
