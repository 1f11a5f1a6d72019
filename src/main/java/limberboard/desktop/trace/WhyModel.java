package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.trace.Alternative;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.words.Minutes;

/**
 * Why a step comes next: what else could be done, what each answer would do, and what is proven,
 * without Swing. Worked out in the background, and only while it is open. For the event thread
 * only.
 */
public final class WhyModel extends Observed {
  private static final double SAME = 0.5;
  private final Latest latest;
  private Optional<Trace> trace = Optional.empty();
  private Optional<NextStep> proposed = Optional.empty();
  private Optional<NextStep> chosen = Optional.empty();
  private Known known = Known.NOTHING;

  /**
   * What has been worked out.
   *
   * @param options what can be done, the best first
   * @param atLeast what is proven to be the least, in minutes
   * @param expected what the best option costs on average, in minutes
   * @param effects what each outcome of the chosen option would do
   */
  private record Known(
      List<Alternative> options, double atLeast, double expected, List<Effect> effects) {
    static final Known NOTHING = new Known(List.of(), 0, 0, List.of());
  }

  /** A model with nothing open. */
  public WhyModel(Background background) {
    this.latest = new Latest(background);
  }

  /** Gives reasons for a step. */
  void open(Trace at, NextStep step) {
    trace = Optional.of(at);
    proposed = Optional.of(step);
    choose(step);
  }

  /** The same step of the same trace after files have changed; what is shown stays until then. */
  void readAgain(Trace at, NextStep step) {
    NextStep.Which looked = chosen.orElse(step).which();
    trace = Optional.of(at);
    proposed = Optional.of(step);
    NextStep still =
        at.alternatives().stream()
            .map(Alternative::step)
            .filter(then -> then.which().equals(looked))
            .findFirst()
            .orElse(step);
    chosen = Optional.of(still);
    tell();
    workOut(at, still);
  }

  /** Needs no reasons any longer. */
  void close() {
    latest.drop();
    trace = Optional.empty();
    proposed = Optional.empty();
    chosen = Optional.empty();
    known = Known.NOTHING;
    tell();
  }

  /** Looks at what the answers of a step would do. */
  public void choose(NextStep step) {
    if (trace.isEmpty() || chosen.equals(Optional.of(step))) {
      return;
    }
    Trace at = trace.get();
    chosen = Optional.of(step);
    known = new Known(known.options(), known.atLeast(), known.expected(), List.of());
    tell();
    workOut(at, step);
  }

  private void workOut(Trace at, NextStep step) {
    latest.run(
        "Working out what each answer would do",
        () -> workedOut(at, step),
        outcome -> {
          known = outcome;
          tell();
        });
  }

  private static Known workedOut(Trace at, NextStep step) {
    return new Known(
        at.alternatives(),
        at.atLeastMinutes(),
        at.expectedMinutes(),
        at.outcomes(step).stream().map(Effect::of).toList());
  }

  /** The step that reasons are given for. */
  public Optional<NextStep> proposed() {
    return proposed;
  }

  /** The trace where it comes next. */
  public Optional<Trace> trace() {
    return trace;
  }

  /** The step whose answers are looked at. */
  public Optional<NextStep> chosen() {
    return chosen;
  }

  /** Everything that can be done, the best first; empty until it is worked out. */
  public List<Alternative> options() {
    return known.options();
  }

  /** What each outcome of the chosen step would do; empty until it is worked out. */
  public List<Effect> effects() {
    return known.effects();
  }

  /** Whether it is still being worked out. */
  public boolean isWorking() {
    return chosen.filter(step -> !(step instanceof NextStep.CallYard)).isPresent()
        && known.effects().isEmpty();
  }

  /** What is proven, in a sentence; empty until it is worked out. */
  public Optional<String> proven() {
    if (known.options().isEmpty()) {
      return Optional.empty();
    }
    String plan = Minutes.words(known.expected());
    String least = Minutes.words(known.atLeast());
    boolean best = known.expected() - known.atLeast() < SAME;
    return Optional.of(
        best
            ? "This plan: " + plan + " on average, and it is proven that none needs less."
            : "At least "
                + least
                + " on average whatever is done: that is proven. This plan: no more than "
                + plan
                + ", and mostly less, for it is thought over again at every step.");
  }
}
