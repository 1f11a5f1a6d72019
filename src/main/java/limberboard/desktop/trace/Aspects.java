package limberboard.desktop.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.tree.TreeModel;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/**
 * Which aspect of the trace is looked at, without Swing. The tree stays while answers change; the
 * reasons are those of one step and go with it. For the event thread only.
 */
public final class Aspects {
  private final TraceModel trace;
  private final TreeModel tree;
  private final WhyModel why;
  private final List<Runnable> listeners = new ArrayList<>();
  private Aspect now = Aspect.STEP;
  private Optional<Trace> seen = Optional.empty();
  private Optional<NextStep> step = Optional.empty();

  /**
   * Aspects of a trace, beginning with the next step.
   *
   * @param trace the trace
   * @param tree is told where the trace stands, and whether it is looked at
   * @param why is told what to give reasons for
   */
  public Aspects(TraceModel trace, TreeModel tree, WhyModel why) {
    this.trace = trace;
    this.tree = tree;
    this.why = why;
    trace.onChange(this::follow);
    follow();
  }

  /** Calls the listener after each change. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** What is looked at. */
  public Aspect now() {
    return now;
  }

  /** The tree. */
  public TreeModel tree() {
    return tree;
  }

  /** The reasons. */
  public WhyModel why() {
    return why;
  }

  /** Whether something can be looked at now. */
  public boolean isOffered(Aspect aspect) {
    return aspect != Aspect.WHY || trace.stage() != Stage.MENDED;
  }

  /** Looks at something. */
  public void look(Aspect aspect) {
    if (aspect == now || !isOffered(aspect)) {
      return;
    }
    now = aspect;
    tree.want(now == Aspect.TREE);
    if (now == Aspect.WHY && underWay().isPresent() && trace.step().isPresent()) {
      why.open(underWay().get(), trace.step().get());
    } else {
      why.close();
    }
    List.copyOf(listeners).forEach(Runnable::run);
  }

  private Optional<Trace> underWay() {
    return trace.stage().ordinal() < Stage.CHECK.ordinal() ? Optional.empty() : trace.trace();
  }

  private void follow() {
    Optional<Trace> trail = underWay();
    boolean otherFault = !trail.map(Trace::fault).equals(seen.map(Trace::fault));
    boolean otherStep = !trail.equals(seen) || !trace.step().equals(step);
    seen = trail;
    step = trace.step();
    tree.follow(trail);
    if (otherFault || (now == Aspect.WHY && (otherStep || !isOffered(now)))) {
      look(Aspect.STEP);
    }
  }
}
