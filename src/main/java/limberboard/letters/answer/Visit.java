package limberboard.letters.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import limberboard.library.page.Model.Access;
import limberboard.trace.NextStep;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.StepOutcome;
import limberboard.trace.Trace;

/**
 * The checks that one visit to the boat answers: the one that comes next, and those that the
 * planner would most probably ask for after it, whatever is found. They stand so that what has to
 * be opened is opened once.
 *
 * <p>The planner's own strategy is followed down its likeliest branches first. A check of somebody
 * else's, and one for which more has to be opened than a visit has time for, is left to a later
 * letter; what safety demands first is asked for by itself.
 */
final class Visit {
  /** How many checks a letter asks for at most. */
  static final int MOST = 3;

  /** How long it may take to open what another check needs, in minutes. */
  static final double LONGEST_ACCESS = 20;

  private static final double LEAST_CHANCE = 0.1;
  private static final int MOST_PLANS = 12;

  private Visit() {}

  /**
   * A check of the visit.
   *
   * @param step the check
   * @param toOpen what must be opened for it after those before it, in order
   */
  record Asked(DoCheck step, List<Access> toOpen) {
    Asked {
      toOpen = List.copyOf(toOpen);
    }

    /** What it takes then, in minutes. */
    double minutes() {
      return step.check().minutes() + toOpen.stream().mapToDouble(Access::minutes).sum();
    }
  }

  private record Branch(Trace trace, double chance) {}

  /** The checks, in the order in which they are made; the first is the trace's next. */
  static List<Asked> of(Trace trace, DoCheck next) {
    Map<String, DoCheck> chosen = new LinkedHashMap<>();
    chosen.put(next.id(), next);
    if (trace.isSafe() && next.check().check().skill().ownerMay()) {
      follow(trace, next, chosen);
    }
    return ordered(List.copyOf(chosen.values()));
  }

  private static void follow(Trace trace, DoCheck first, Map<String, DoCheck> chosen) {
    PriorityQueue<Branch> open =
        new PriorityQueue<>(Comparator.comparingDouble(Branch::chance).reversed());
    grow(new Branch(trace, 1), first, open);
    for (int plans = 0; plans < MOST_PLANS && chosen.size() < MOST && !open.isEmpty(); plans++) {
      Branch branch = open.poll();
      NextStep step = branch.trace().next();
      if (step instanceof DoCheck check && fits(check, chosen)) {
        chosen.putIfAbsent(check.id(), check);
        grow(branch, check, open);
      }
    }
  }

  private static void grow(Branch branch, DoCheck check, PriorityQueue<Branch> open) {
    for (StepOutcome outcome : branch.trace().outcomes(check)) {
      double chance = branch.chance() * outcome.chance();
      if (chance >= LEAST_CHANCE) {
        outcome.then().ifPresent(then -> open.add(new Branch(then, chance)));
      }
    }
  }

  private static boolean fits(DoCheck check, Map<String, DoCheck> chosen) {
    Set<String> opened = new HashSet<>();
    chosen.values().forEach(each -> each.check().access().forEach(one -> opened.add(one.id())));
    double more =
        check.check().access().stream()
            .filter(access -> !opened.contains(access.id()))
            .mapToDouble(Access::minutes)
            .sum();
    return check.check().check().skill().ownerMay()
        && !check.check().check().comesFirst()
        && more <= LONGEST_ACCESS;
  }

  /** Behind each check those that need nothing more opened, then the others. */
  private static List<Asked> ordered(List<DoCheck> chosen) {
    List<DoCheck> left = new ArrayList<>(chosen);
    List<Asked> asked = new ArrayList<>();
    Set<String> opened = new HashSet<>();
    while (!left.isEmpty()) {
      DoCheck next =
          asked.isEmpty()
              ? left.get(0)
              : left.stream()
                  .min(
                      Comparator.comparingDouble(
                          check ->
                              toOpen(check, opened).stream().mapToDouble(Access::minutes).sum()))
                  .orElseThrow();
      left.remove(next);
      List<Access> toOpen = asked.isEmpty() ? next.toOpen() : toOpen(next, opened);
      next.check().access().forEach(access -> opened.add(access.id()));
      asked.add(new Asked(next, toOpen));
    }
    return asked;
  }

  private static List<Access> toOpen(DoCheck check, Set<String> opened) {
    return check.check().access().stream().filter(access -> !opened.contains(access.id())).toList();
  }
}
