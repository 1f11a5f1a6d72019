package limberboard.effort;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;

/**
 * Looks for the best whole strategy: exactly where that is done within the work allowed, and
 * otherwise as far ahead as that work reaches, with {@link OneStep} and the {@link MendOrder order
 * of mends} as the estimate of what lies beyond. What can at most be gained is known either way and
 * comes with the advice.
 *
 * <p>The work is counted, not timed, so that the same situation always gets the same advice. Faults
 * of hundreds of causes use it up with the first look around; then the advice is {@link OneStep}'s.
 */
public final class Planner implements Policy {
  /** Work that a few hundredths of a second suffice for. */
  public static final long PROMPT = 150_000;

  private static final double ROUNDING = 1e-9;
  private static final double EXACT = 1e-9;

  private final long work;
  private final OneStep oneStep = new OneStep();

  /** Makes a planner that answers at once. */
  public Planner() {
    this(PROMPT);
  }

  /**
   * Makes a planner.
   *
   * @param work how many chances may be weighed for one piece of advice: one for each cause, for
   *     each way each step that is looked at can turn out; the first look around is always made
   */
  public Planner(long work) {
    this.work = work;
  }

  @Override
  public Advice advise(EffortModel model, Situation now) {
    Advice first = oneStep.advise(model, now);
    Search search = new Search(model, now);
    Node root = search.root();
    search.run(EXACT, Double.POSITIVE_INFINITY, Math.max(1, work));
    List<Option> safety = new ArrayList<>();
    List<Option> others = new ArrayList<>();
    for (Option option : first.options()) {
      (option.grounds() == Grounds.SAFETY ? safety : others).add(known(option, root));
    }
    others.addAll(unforeseen(first, root));
    others.sort(
        Comparator.comparingDouble(
                (Option option) -> Math.rint(option.expectedMinutes() / ROUNDING))
            .thenComparing(Option::action)
            .thenComparingInt(Option::index));
    safety.addAll(others);
    return new Advice(safety, Math.min(root.atLeast, safety.get(0).expectedMinutes()));
  }

  /** Mends that pay only with the checks after them, which one step ahead does not see. */
  private static List<Option> unforeseen(Advice first, Node root) {
    List<Option> more = new ArrayList<>();
    if (root.isExpanded()) {
      for (Node.Move move : root.moves) {
        boolean known =
            first.options().stream()
                .anyMatch(option -> option.action() == move.action && option.index() == move.index);
        if (!known && move.atMost < Double.POSITIVE_INFINITY) {
          more.add(new Option(move.action, move.index, move.minutes, move.atMost, Grounds.EFFORT));
        }
      }
    }
    return more;
  }

  private static Option known(Option option, Node root) {
    double minutes = option.expectedMinutes();
    if (root.isExpanded()) {
      for (Node.Move move : root.moves) {
        if (move.action == option.action() && move.index == option.index()) {
          minutes = Math.min(minutes, move.atMost);
        }
      }
    }
    return option.expecting(minutes);
  }
}
