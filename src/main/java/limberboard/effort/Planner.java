package limberboard.effort;

import java.util.ArrayList;
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
  public static final long PROMPT = 300_000;

  private static final double EXACT = 1e-9;

  private final long work;

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
    Search search = new Search(model, now);
    Node root = search.root();
    search.run(EXACT, Double.POSITIVE_INFINITY, Math.max(1, work));
    List<Option> oneStep = OneStep.options(model, now);
    List<Option> options = new ArrayList<>(unforeseen(oneStep, root));
    oneStep.forEach(option -> options.add(known(option, root)));
    Advice advice = Advice.inOrder(options, root.atLeast);
    double best = advice.best().expectedMinutes();
    return new Advice(advice.options(), Math.min(root.atLeast, best));
  }

  /** Mends that pay only with the checks after them, which one step ahead does not see. */
  private static List<Option> unforeseen(List<Option> oneStep, Node root) {
    return root.moves().stream()
        .filter(move -> move.atMost < Double.POSITIVE_INFINITY)
        .filter(
            move ->
                oneStep.stream()
                    .noneMatch(
                        option -> option.action() == move.action && option.index() == move.index))
        .map(move -> new Option(move.action, move.index, move.minutes, move.atMost, Grounds.EFFORT))
        .toList();
  }

  private static Option known(Option option, Node root) {
    return root.move(option.action(), option.index())
        .map(move -> option.expecting(Math.min(option.expectedMinutes(), move.atMost)))
        .orElse(option);
  }
}
