package limberboard.upkeep.plan.choice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Chooses where some chores do others as well: whose worth the choice then has without their
 * minutes, once, whichever does them. Each choice leaves out some of those that do others; for each
 * set of these there is one question without such chores, since what is met brings its worth with
 * the chore that does it, or stands by itself. The questions that promise most are asked first, and
 * none that promises no more than what was found. Stateless.
 */
public final class Meetings {
  /** Of more chores that do others these are looked at, those whose met work is worth most. */
  static final int MOST_DOERS = 5;

  private final Chores chores;
  private final List<Meeting> meetings;
  private final int[] stages;

  private Meetings(Chores chores, List<Meeting> meetings) {
    this.chores = chores;
    this.meetings = possible(chores, meetings);
    this.stages = new int[chores.size()];
    for (int chore : chores.inOrder()) {
      stages[chore] = chores.chore(chore).stage();
      for (int before : chores.chore(chore).after()) {
        stages[chore] = Math.max(stages[chore], stages[before]);
      }
    }
  }

  /**
   * The best choice found. A met chore has no day.
   *
   * @param meetings what does what as well; only those count that are {@link #possible}
   * @param mostSteps as in {@link ChoiceSearch#of(Chores, long)}, for all questions together
   */
  public static DayChoice of(Chores chores, List<Meeting> meetings, long mostSteps) {
    return new Meetings(chores, meetings).search(mostSteps);
  }

  /**
   * Those that can be kept: where what is met does not come before what does it, and all that waits
   * for what is met waits for what does it too, or is met by it as well. Of more than {@value
   * #MOST_DOERS} chores that do others those whose met chores are worth most; the others do nothing
   * else.
   */
  public static List<Meeting> possible(Chores chores, List<Meeting> meetings) {
    List<BitSet> earlier = earlier(chores);
    List<Meeting> kept = new ArrayList<>();
    for (Meeting each : new HashSet<>(meetings)) {
      if (each.doer() != each.met() && !earlier.get(each.doer()).get(each.met())) {
        kept.add(each);
      }
    }
    while (kept.removeIf(each -> keepsWaiting(chores, kept, earlier, each))) {
      // what was met no more may have let others be met
    }
    kept.sort(Comparator.comparing(Meeting::doer).thenComparing(Meeting::met));
    Comparator<Integer> byWorth = Comparator.comparing(doer -> -metWorth(chores, kept, doer));
    List<Integer> doers =
        kept.stream()
            .map(Meeting::doer)
            .distinct()
            .sorted(byWorth.thenComparing(doer -> doer))
            .limit(MOST_DOERS)
            .toList();
    return kept.stream().filter(each -> doers.contains(each.doer())).toList();
  }

  /** Whether something waits for what is met, but neither for what does it, nor is met by it. */
  private static boolean keepsWaiting(
      Chores chores, List<Meeting> meetings, List<BitSet> earlier, Meeting one) {
    for (int i = 0; i < chores.size(); i++) {
      if (chores.chore(i).after().contains(one.met())
          && !earlier.get(i).get(one.doer())
          && !meetings.contains(new Meeting(one.doer(), i))) {
        return true;
      }
    }
    return false;
  }

  private static long metWorth(Chores chores, List<Meeting> meetings, int doer) {
    return meetings.stream()
        .filter(each -> each.doer() == doer)
        .mapToLong(each -> chores.chore(each.met()).worth())
        .sum();
  }

  /** For each chore all that come before it. */
  private static List<BitSet> earlier(Chores chores) {
    List<BitSet> earlier = new ArrayList<>();
    for (int i = 0; i < chores.size(); i++) {
      earlier.add(new BitSet());
    }
    for (int chore : chores.inOrder()) {
      for (int before : chores.chore(chore).after()) {
        earlier.get(chore).set(before);
        earlier.get(chore).or(earlier.get(before));
      }
    }
    return earlier;
  }

  /** A question without chores that do others, and what it promises. */
  private record Variant(Chores chores, long most) {}

  private DayChoice search(long mostSteps) {
    if (meetings.isEmpty()) {
      return ChoiceSearch.of(chores, mostSteps);
    }
    List<Variant> variants = new ArrayList<>(variants());
    variants.sort(Comparator.comparing((Variant variant) -> -variant.most()));
    DayChoice best = new DayChoice(nothing(), 0, 0, 0);
    long most = 0;
    long steps = 0;
    for (Variant variant : variants) {
      if (variant.most() > best.worth()) {
        long share = Math.max(1, (mostSteps - steps) / 2);
        DayChoice found = ChoiceSearch.of(variant.chores(), share, best.worth());
        steps += found.steps();
        most = Math.max(most, found.most());
        best = found.worth() > best.worth() ? found : best;
      }
    }
    return new DayChoice(best.days(), best.worth(), Math.max(most, best.worth()), steps);
  }

  private List<Integer> nothing() {
    return Collections.nCopies(chores.size(), DayFill.NONE);
  }

  private List<Variant> variants() {
    SortedSet<Integer> doers = new TreeSet<>();
    meetings.forEach(each -> doers.add(each.doer()));
    List<Integer> all = List.copyOf(doers);
    List<Variant> variants = new ArrayList<>();
    for (int bits = 0; bits < 1 << all.size(); bits++) {
      Set<Integer> may = new TreeSet<>();
      for (int i = 0; i < all.size(); i++) {
        if ((bits >> i & 1) == 1) {
          may.add(all.get(i));
        }
      }
      if (meetings.stream().noneMatch(m -> may.contains(m.doer()) && may.contains(m.met()))) {
        Chores variant = variant(doers, may);
        variants.add(new Variant(variant, ChoiceSearch.promise(variant)));
      }
    }
    return variants;
  }

  /**
   * The question in which of the chores that do others only some may be done.
   *
   * @param doers those that do others
   * @param may those of them that may be done; what they meet brings its worth with the first
   */
  private Chores variant(Set<Integer> doers, Set<Integer> may) {
    long[] worth = new long[chores.size()];
    boolean[] met = new boolean[worth.length];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = chores.chore(i).worth();
    }
    for (Meeting each : meetings) {
      if (may.contains(each.doer()) && !met[each.met()]) {
        met[each.met()] = true;
        worth[each.doer()] += chores.chore(each.met()).worth();
      }
    }
    List<Chore> all = new ArrayList<>();
    for (int i = 0; i < worth.length; i++) {
      Chore old = chores.chore(i);
      Set<Integer> after = new TreeSet<>(old.after());
      meetings.stream()
          .filter(each -> may.contains(each.doer()) && old.after().contains(each.met()))
          .forEach(each -> after.add(each.doer()));
      after.removeIf(before -> met[before]);
      Set<Integer> behind = new TreeSet<>(old.behind());
      behind.removeIf(before -> met[before]);
      boolean left = met[i] || doers.contains(i) && !may.contains(i);
      all.add(
          left
              ? new Chore(0, 0, met[i] ? Set.of() : after, Set.of(), 0, -1, stages[i])
              : new Chore(
                  old.minutes(),
                  worth[i],
                  after,
                  old.opens(),
                  old.firstDay(),
                  old.lastDay(),
                  stages[i],
                  behind));
    }
    return new Chores(all, chores.openings(), chores.days());
  }
}
