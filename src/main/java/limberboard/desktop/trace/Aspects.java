package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Observed;
import limberboard.desktop.tree.TreeModel;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;

/**
 * Which aspect of the trace is looked at, without Swing. The tree stays while answers change; the
 * reasons are those of one step and go with it. For the event thread only.
 */
public final class Aspects extends Observed {
  private final TraceModel trace;
  private final TreeModel tree;
  private final WhyModel why;
  private Aspect looked = Aspect.STEP;
  private Aspect before = Aspect.STEP;
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

  /** What is looked at. */
  public Aspect now() {
    return looked;
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
    return switch (aspect) {
      case WHY -> trace.stage() != Stage.MENDED;
      case CAUTIONS -> underWay().isPresent() && !trace.cautionsHere().isEmpty();
      default -> true;
    };
  }

  /** Looks at the cautions in full, which are then read, or back at what was looked at before. */
  public void turnToCautions() {
    if (looked == Aspect.CAUTIONS) {
      look(before);
      return;
    }
    look(Aspect.CAUTIONS);
    if (looked == Aspect.CAUTIONS) {
      trace.read(trace.cautionsHere());
    }
  }

  /** Looks at something. */
  public void look(Aspect aspect) {
    if (aspect == looked || !isOffered(aspect)) {
      return;
    }
    before = looked;
    looked = aspect;
    tree.want(looked == Aspect.TREE);
    if (looked == Aspect.WHY && underWay().isPresent() && trace.step().isPresent()) {
      why.open(underWay().get(), trace.step().get());
    } else {
      why.close();
    }
    tell();
  }

  private Optional<Trace> underWay() {
    return trace.stage().isUnderWay() ? trace.trace() : Optional.empty();
  }

  /** What a trace is about: its boat and symptom, however often their files are read. */
  private static List<String> about(Trace trace) {
    return List.of(trace.fault().fitting().boat().id(), trace.fault().page().id());
  }

  private void follow() {
    Optional<Trace> trail = underWay();
    Optional<NextStep> now = trace.step();
    boolean otherFault = !trail.map(Aspects::about).equals(seen.map(Aspects::about));
    boolean otherStep =
        !trail.map(Aspects::steps).equals(seen.map(Aspects::steps))
            || !now.map(NextStep::which).equals(step.map(NextStep::which));
    boolean readAgain = !trail.equals(seen) || !now.equals(step);
    seen = trail;
    step = now;
    tree.follow(trail);
    boolean ofOneStep = looked == Aspect.WHY || looked == Aspect.CAUTIONS;
    if (otherFault || (ofOneStep && (otherStep || !isOffered(looked)))) {
      look(Aspect.STEP);
    } else if (looked == Aspect.WHY && readAgain && trail.isPresent() && now.isPresent()) {
      why.readAgain(trail.get(), now.get());
    }
  }

  private static List<TrailStep> steps(Trace trace) {
    return trace.trail().stream().map(TrailEntry::step).toList();
  }
}
