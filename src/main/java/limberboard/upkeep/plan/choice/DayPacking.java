package limberboard.upkeep.plan.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Lays chosen chores into days: in the order of their stages and of what comes before what, within
 * the minutes of each day. For one thread.
 */
final class DayPacking {
  private static final int OTHERS_A_STEP = 8;

  private final Chores chores;
  private final int[][] earlier;
  private final int[] rank;
  private final int[] stage;
  private final long[] opening;
  private final boolean staged;
  private long steps;

  DayPacking(Chores chores) {
    this.chores = chores;
    earlier = new int[chores.size()][];
    rank = new int[chores.size()];
    stage = new int[chores.size()];
    opening = new long[chores.size()];
    for (int chore : chores.inOrder()) {
      stage[chore] = chores.chore(chore).stage();
      earlier[chore] = chores.chore(chore).earlier().stream().mapToInt(each -> each).toArray();
      opening[chore] = chores.chore(chore).opens().stream().mapToLong(chores::opening).sum();
      for (int before : chores.chore(chore).after()) {
        stage[chore] = Math.max(stage[chore], stage[before]);
      }
      for (int before : chores.chore(chore).earlier()) {
        rank[chore] = Math.max(rank[chore], rank[before] + 1);
      }
    }
    staged = Arrays.stream(stage).distinct().count() > 1;
  }

  /**
   * What came of laying chores into days.
   *
   * @param packs whether they are all in
   * @param impossible whether it is proven that there is no way
   * @param fill the days, with all of them if they are in
   */
  record Packed(boolean packs, boolean impossible, DayFill fill) {}

  /** Days tried so far. */
  long steps() {
    return steps;
  }

  /**
   * Looks for days for chores, trying out every way until so many steps were taken.
   *
   * @param set the chores, with all that come before them
   */
  Packed pack(BitSet set, long tries) {
    DayFill fill = new DayFill(chores);
    if (isTooMuch(set)) {
      return new Packed(false, true, fill);
    }
    List<Integer> order = inOrder(set);
    long end = steps + tries;
    boolean packs = lay(order, 0, fill, end);
    return new Packed(packs, !packs && steps < end, fill);
  }

  /**
   * A set by stage, what comes first before what follows it, then what takes most opening, with
   * what opens the same behind it, and then the longest first.
   */
  List<Integer> inOrder(BitSet set) {
    List<Integer> order = new ArrayList<>(set.stream().boxed().toList());
    order.sort(
        Comparator.comparing((Integer chore) -> stage[chore])
            .thenComparing(chore -> rank[chore])
            .thenComparing(chore -> -opening[chore])
            .thenComparing(chore -> chores.chore(chore).openings().toString())
            .thenComparing(chore -> -chores.chore(chore).minutes())
            .thenComparing(chore -> chore));
    return order;
  }

  private boolean isTooMuch(BitSet set) {
    long sum = 0;
    BitSet open = new BitSet();
    for (int chore = set.nextSetBit(0); chore >= 0; chore = set.nextSetBit(chore + 1)) {
      sum += chores.chore(chore).minutes();
      chores.chore(chore).opens().forEach(open::set);
    }
    sum += open.stream().mapToLong(chores::opening).sum();
    return sum > chores.time();
  }

  private boolean lay(List<Integer> order, int at, DayFill fill, long end) {
    if (at == order.size()) {
      return true;
    }
    int chore = order.get(at);
    List<Integer> days = new ArrayList<>();
    for (int day = earliest(chore, fill); day <= latest(chore, fill); day++) {
      steps++;
      if (fill.fits(chore, day)) {
        days.add(day);
      }
    }
    sort(days, chore, fill);
    for (int day : days) {
      if (steps >= end) {
        return false;
      }
      fill.place(chore, day);
      if (lay(order, at + 1, fill, end)) {
        return true;
      }
      fill.remove(chore);
    }
    return false;
  }

  /**
   * The day that costs least opening first, then the fullest, then the earliest. Where stages
   * follow each other the earliest comes before the fullest, so that the later ones find room.
   */
  private void sort(List<Integer> days, int chore, DayFill fill) {
    Comparator<Integer> byOpening = Comparator.comparing(day -> fill.opening(chore, day));
    days.sort(
        byOpening.thenComparing(day -> staged ? 0 : fill.left(day)).thenComparing(day -> day));
  }

  private int earliest(int chore, DayFill fill) {
    int day = chores.chore(chore).firstDay();
    for (int before : earlier[chore]) {
      day = Math.max(day, fill.dayOf(before));
    }
    for (int other = 0; other < stage.length; other++) {
      if (stage[other] != Chore.ANY_STAGE && stage[other] < stage[chore]) {
        day = Math.max(day, fill.dayOf(other));
      }
    }
    return day;
  }

  private boolean isEarlier(int one, int other) {
    return Arrays.binarySearch(earlier[other], one) >= 0;
  }

  private int latest(int chore, DayFill fill) {
    int day = Math.min(chores.chore(chore).lastDay(), chores.days().size() - 1);
    for (int other = 0; other < stage.length; other++) {
      if (fill.dayOf(other) != DayFill.NONE
          && (stage[chore] != Chore.ANY_STAGE && stage[other] > stage[chore]
              || isEarlier(chore, other))) {
        day = Math.min(day, fill.dayOf(other));
      }
    }
    return day;
  }

  /**
   * Puts chores in where they fit without moving what is there already, all of them or none.
   *
   * @param wanted the chores, each after those that come before it
   * @return whether they are in
   */
  boolean add(List<Integer> wanted, DayFill fill) {
    List<Integer> in = new ArrayList<>();
    for (int chore : wanted) {
      steps += stage.length / OTHERS_A_STEP;
      List<Integer> days = new ArrayList<>();
      for (int day = earliest(chore, fill); day <= latest(chore, fill); day++) {
        steps++;
        if (fill.fits(chore, day)) {
          days.add(day);
        }
      }
      if (days.isEmpty()) {
        in.forEach(fill::remove);
        return false;
      }
      sort(days, chore, fill);
      fill.place(chore, days.get(0));
      in.add(chore);
    }
    return true;
  }
}
