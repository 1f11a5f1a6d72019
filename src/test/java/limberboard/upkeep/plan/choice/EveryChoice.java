package limberboard.upkeep.plan.choice;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/** Tries every choice there is, reckoned from the rules alone. */
final class EveryChoice {
  private final Chores chores;
  private long best;

  private EveryChoice(Chores chores) {
    this.chores = chores;
  }

  /** What the best choice is worth. */
  static long worth(Chores chores) {
    EveryChoice every = new EveryChoice(chores);
    int[] days = new int[chores.size()];
    every.go(days, 0);
    return every.best;
  }

  private void go(int[] days, int at) {
    if (at == days.length) {
      if (isAllowed(chores, days)) {
        best = Math.max(best, worth(chores, days));
      }
      return;
    }
    for (int day = -1; day < chores.days().size(); day++) {
      days[at] = day;
      go(days, at + 1);
    }
  }

  static long worth(Chores chores, int[] days) {
    long sum = 0;
    for (int i = 0; i < days.length; i++) {
      sum += days[i] < 0 ? 0 : chores.chores().get(i).worth();
    }
    return sum;
  }

  /** Whether a choice keeps order, stages, days and time. */
  static boolean isAllowed(Chores chores, int[] days) {
    int[] stages = stages(chores);
    for (int i = 0; i < days.length; i++) {
      Chore chore = chores.chores().get(i);
      if (days[i] < 0) {
        continue;
      }
      if (days[i] < chore.firstDay() || days[i] > chore.lastDay()) {
        return false;
      }
      for (int before : chore.after()) {
        if (days[before] < 0 || days[before] > days[i]) {
          return false;
        }
      }
      for (int j = 0; j < days.length; j++) {
        if (days[j] >= 0 && stages[j] >= 0 && stages[j] < stages[i] && days[j] > days[i]) {
          return false;
        }
      }
    }
    for (int day = 0; day < chores.days().size(); day++) {
      if (minutes(chores, days, day) > chores.days().get(day)) {
        return false;
      }
    }
    return true;
  }

  private static long minutes(Chores chores, int[] days, int day) {
    long sum = 0;
    Set<Integer> opened = new TreeSet<>();
    for (int i = 0; i < days.length; i++) {
      if (days[i] == day) {
        sum += chores.chores().get(i).minutes();
        opened.addAll(chores.chores().get(i).opens());
      }
    }
    for (int opening : opened) {
      sum += chores.openings().get(opening);
    }
    return sum;
  }

  /** A chore that waits for one of a later stage belongs to that stage. */
  private static int[] stages(Chores chores) {
    int[] stages = new int[chores.size()];
    Arrays.setAll(stages, i -> stage(chores, i, new HashSet<>()));
    return stages;
  }

  private static int stage(Chores chores, int chore, Set<Integer> seen) {
    int stage = chores.chores().get(chore).stage();
    if (seen.add(chore)) {
      for (int before : chores.chores().get(chore).after()) {
        stage = Math.max(stage, stage(chores, before, seen));
      }
    }
    return stage;
  }
}
