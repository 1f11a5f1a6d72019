package limberboard.upkeep.plan.choice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Set;

/**
 * Work to choose from, what it takes to reach it, and the time there is. Not changed once made.
 *
 * @param chores the work
 * @param openings minutes of opening and closing each access, at least 0
 * @param days minutes of each day, in order, at least 0
 */
public record Chores(List<Chore> chores, List<Integer> openings, List<Integer> days) {
  /** Worth times minutes beyond this could not be reckoned exactly. */
  public static final long MOST = 1L << 60;

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException when a number points nowhere, when what comes before what runs
   *     in a circle, or when worth times minutes is beyond 2^60
   */
  public Chores {
    chores = List.copyOf(chores);
    openings = List.copyOf(openings);
    days = List.copyOf(days);
    for (Chore chore : chores) {
      within(chore.earlier(), chores.size());
      within(chore.opens(), openings.size());
    }
    for (int minutes : openings) {
      notBelowZero(minutes);
    }
    for (int minutes : days) {
      notBelowZero(minutes);
    }
    if (inOrder(chores).size() < chores.size()) {
      throw new IllegalArgumentException("what comes before what runs in a circle");
    }
    long worth = 0;
    long minutes = 1;
    for (Chore chore : chores) {
      worth = Math.addExact(worth, chore.worth());
      minutes += chore.minutes();
    }
    for (int each : openings) {
      minutes += each;
    }
    if (worth > MOST / minutes) {
      throw new IllegalArgumentException("too much worth and too many minutes to be multiplied");
    }
  }

  private static void within(Iterable<Integer> numbers, int end) {
    for (int number : numbers) {
      if (number < 0 || number >= end) {
        throw new IllegalArgumentException("there is no number " + number);
      }
    }
  }

  private static void notBelowZero(int minutes) {
    if (minutes < 0) {
      throw new IllegalArgumentException("no minutes are below zero");
    }
  }

  /** The chores with each after all that come before it; those of a circle are left out. */
  private static List<Integer> inOrder(List<Chore> chores) {
    int[] waits = new int[chores.size()];
    List<List<Integer>> later = new ArrayList<>();
    chores.forEach(chore -> later.add(new ArrayList<>()));
    Deque<Integer> free = new ArrayDeque<>();
    for (int i = 0; i < waits.length; i++) {
      Set<Integer> earlier = chores.get(i).earlier();
      for (int before : earlier) {
        later.get(before).add(i);
      }
      waits[i] = earlier.size();
      if (waits[i] == 0) {
        free.add(i);
      }
    }
    List<Integer> order = new ArrayList<>();
    while (!free.isEmpty()) {
      int next = free.remove();
      order.add(next);
      for (int after : later.get(next)) {
        waits[after]--;
        if (waits[after] == 0) {
          free.add(after);
        }
      }
    }
    return order;
  }

  /** The chores with each after all that come before it. */
  List<Integer> inOrder() {
    return inOrder(chores);
  }

  int size() {
    return chores.size();
  }

  Chore chore(int number) {
    return chores.get(number);
  }

  /** Minutes of all days together. */
  long time() {
    long sum = 0;
    for (int minutes : days) {
      sum += minutes;
    }
    return sum;
  }

  /** What a set of chores is worth. */
  long worth(BitSet set) {
    return set.stream().mapToLong(i -> chores.get(i).worth()).sum();
  }

  /** Minutes of opening for an access. */
  int opening(int number) {
    return openings.get(number);
  }
}
