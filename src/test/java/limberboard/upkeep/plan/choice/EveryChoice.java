package limberboard.upkeep.plan.choice;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Tries every choice there is, reckoned from the rules alone. */
final class EveryChoice {
  private final Chores chores;
  private final List<Meeting> meetings;
  private long best;

  private EveryChoice(Chores chores, List<Meeting> meetings) {
    this.chores = chores;
    this.meetings = meetings;
  }

  /** What the best choice is worth. */
  static long worth(Chores chores) {
    return worth(chores, List.of());
  }

  /** What the best choice is worth where some chores do others as well. */
  static long worth(Chores chores, List<Meeting> meetings) {
    EveryChoice every = new EveryChoice(chores, meetings);
    int[] days = new int[chores.size()];
    every.go(days, 0);
    return every.best;
  }

  private void go(int[] days, int at) {
    if (at == days.length) {
      if (isAllowed(chores, meetings, days)) {
        best = Math.max(best, worth(chores, meetings, days));
      }
      return;
    }
    for (int day = -1; day < chores.days().size(); day++) {
      days[at] = day;
      go(days, at + 1);
    }
  }

  static long worth(Chores chores, int[] days) {
    return worth(chores, List.of(), days);
  }

  /** What a choice is worth: each chore once, whether it is done or another does it as well. */
  static long worth(Chores chores, List<Meeting> meetings, int[] days) {
    long sum = 0;
    for (int i = 0; i < days.length; i++) {
      sum += days[i] < 0 && !isMet(meetings, days, i) ? 0 : chores.chores().get(i).worth();
    }
    return sum;
  }

  private static boolean isMet(List<Meeting> meetings, int[] days, int chore) {
    return meetings.stream().anyMatch(each -> each.met() == chore && days[each.doer()] >= 0);
  }

  /**
   * Those that can be kept: nothing comes before what does it, and whatever waits for it waits for
   * what does it, or is met by that too, told by walking back.
   */
  static List<Meeting> possible(Chores chores, List<Meeting> all) {
    List<Meeting> kept =
        all.stream().filter(each -> canBeMet(chores, all, each)).distinct().toList();
    return kept.size() == all.size() ? all : possible(chores, kept);
  }

  private static boolean canBeMet(Chores chores, List<Meeting> all, Meeting each) {
    return !comesBefore(chores, each.met(), each.doer())
        && IntStream.range(0, chores.chores().size())
            .filter(i -> chores.chores().get(i).after().contains(each.met()))
            .allMatch(
                i ->
                    comesBefore(chores, each.doer(), i)
                        || all.contains(new Meeting(each.doer(), i)));
  }

  private static boolean comesBefore(Chores chores, int first, int second) {
    return chores.chores().get(second).after().stream()
        .anyMatch(before -> before == first || comesBefore(chores, first, before));
  }

  /** Whether a choice keeps order, stages, days and time. */
  static boolean isAllowed(Chores chores, int[] days) {
    return isAllowed(chores, List.of(), days);
  }

  /** The same where what is met is not done, and need not be before what waits for it. */
  static boolean isAllowed(Chores chores, List<Meeting> meetings, int[] days) {
    for (int i = 0; i < days.length; i++) {
      if (days[i] >= 0 && isMet(meetings, days, i)) {
        return false;
      }
    }
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
        boolean missing = days[before] < 0 && !isMet(meetings, days, before);
        if (missing || lastDay(meetings, days, before) > days[i]) {
          return false;
        }
      }
      for (int before : chore.behind()) {
        if (days[before] > days[i]) {
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

  /** The day on which a chore, or the last that does it, is done. */
  private static int lastDay(List<Meeting> meetings, int[] days, int chore) {
    return meetings.stream()
        .filter(each -> each.met() == chore)
        .mapToInt(each -> days[each.doer()])
        .reduce(days[chore], Math::max);
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
