package limberboard.drill;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.Heed;
import limberboard.drill.DrillStep.Hint;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Secure;
import limberboard.effort.Situation;
import limberboard.library.page.Model.Access;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.trace.Trace;

/** A drill as far as it has been played. Immutable: every step makes a new one. */
public final class DrillRun {
  private final Drill drill;
  private final List<StepDone> done;
  private final Situation now;

  private DrillRun(Drill drill, List<StepDone> done, Situation now) {
    this.drill = drill;
    this.done = List.copyOf(done);
    this.now = now;
  }

  /** Begins a drill. */
  public static DrillRun begin(Drill drill) {
    return new DrillRun(drill, List.of(), drill.beginning());
  }

  /**
   * Plays steps from the beginning.
   *
   * @throws IllegalArgumentException when one cannot be done; the message says which and why
   */
  public static DrillRun of(Drill drill, List<DrillStep> steps) {
    DrillRun run = begin(drill);
    for (int i = 0; i < steps.size(); i++) {
      try {
        run = run.take(steps.get(i));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("step " + (i + 1) + ": " + e.getMessage(), e);
      }
    }
    return run;
  }

  /**
   * Takes a step.
   *
   * @throws IllegalArgumentException when the drill is over or has no such thing; nothing changes
   *     then
   */
  public DrillRun take(DrillStep step) {
    if (ended()) {
      throw new IllegalArgumentException("the drill is over; nothing more can be done in it");
    }
    StepTaker.Taken taken = new StepTaker(this).take(step);
    List<StepDone> more = new ArrayList<>(done);
    more.add(taken.done());
    return new DrillRun(drill, more, believed(more, taken.then()));
  }

  /** With the chances that a trace has by now: after mends in vain it allows for a second fault. */
  private Situation believed(List<StepDone> more, Situation then) {
    Trace trace = TracedDrill.of(drill, Trace.begin(drill.fault()), more);
    return new Situation(trace.situation().chances(), then.open(), then.asked(), then.tried());
  }

  /** The drill. */
  public Drill drill() {
    return drill;
  }

  /** What has been done, in order. */
  public List<StepDone> done() {
    return done;
  }

  /** The step done last. */
  public Optional<StepDone> last() {
    return done.isEmpty() ? Optional.empty() : Optional.of(done.get(done.size() - 1));
  }

  /** Where it stands, as numbers: not to be shown to who plays. */
  public Situation now() {
    return now;
  }

  /** Minutes so far, as in a real trace. */
  public double minutes() {
    return done.stream().mapToDouble(StepDone::minutes).sum();
  }

  /** Whether it is mended, handed over or given up. */
  public boolean ended() {
    return last().map(each -> each.reply().ends()).orElse(false);
  }

  /** How many hints are left. */
  public int hintsLeft() {
    return drill.order().hints()
        - (int) done.stream().filter(each -> each.step() instanceof Hint).count();
  }

  /** Titles of what is open. */
  public List<String> open() {
    return now.open().stream()
        .mapToObj(number -> drill.fault().access().get(number).title())
        .toList();
  }

  /** Minutes that it takes now to open these, without what is open. */
  public double toOpen(List<Access> access) {
    BitSet numbers = new BitSet();
    access.forEach(each -> numbers.set(number(each)));
    return drill.fault().model().accessMinutes(numbers, now.open());
  }

  /** Whether something is open. */
  public boolean isOpen(Access access) {
    return now.open().get(number(access));
  }

  private int number(Access access) {
    return drill.fault().access().stream().map(Access::id).toList().indexOf(access.id());
  }

  /**
   * The check that safety demands next, if one is not passed: not made, or neither answered so that
   * it is safe nor made safe.
   */
  public Optional<FaultCheck> unsafe() {
    return drill.fault().checks().stream()
        .filter(check -> check.check().comesFirst())
        .filter(check -> !isPassed(check))
        .findFirst();
  }

  private boolean isPassed(FaultCheck check) {
    return done.stream()
        .anyMatch(
            each ->
                each.step().equals(new Secure(check.id()))
                    || each.step().equals(new Ask(check.id()))
                        && drill.answer(check).filter(check.check()::isSafe).isPresent());
  }

  /** Whether a check was made, or its answer told by the owner. */
  public boolean isAsked(FaultCheck check) {
    return now.asked().get(drill.fault().checkNumber(check.id()));
  }

  /** The cautions of a piece of work whose step has not been taken yet. */
  public List<WorkCaution> unheeded(List<WorkCaution> ofWork) {
    Set<String> heeded =
        done.stream()
            .map(StepDone::step)
            .filter(Heed.class::isInstance)
            .map(step -> ((Heed) step).caution())
            .collect(Collectors.toSet());
    return ofWork.stream().filter(caution -> !heeded.contains(caution.id())).toList();
  }

  /** Whether a cause's mend was made, or begun and refused. */
  public boolean isTried(FaultCause cause) {
    return done.stream()
        .anyMatch(each -> each.step() instanceof Mend mend && mend.cause().equals(cause.id()));
  }
}
