package limberboard.drill;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import limberboard.boat.WorkCaution;
import limberboard.effort.Onward;
import limberboard.effort.Situation;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;

/**
 * A hidden fault to be found without a boat. Nothing of it is written anywhere, and no real trace,
 * log or case is touched. Immutable; safe for use by several threads.
 */
public final class Drill {
  private static final int TRIES = 1_000_000;

  private final DrillOrder order;
  private final Fault fault;
  private final HiddenFault hidden;
  private final List<String> letter;
  private final String stamp;
  private final Situation beginning;

  private Drill(DrillOrder order, Fault fault, HiddenFault hidden) {
    this.order = order;
    this.fault = fault;
    this.hidden = hidden;
    this.letter = new OwnerWords(fault, hidden, order.seed()).letter();
    this.stamp = FaultStamp.of(fault);
    Situation nothing = fault.model().beginning();
    OptionalInt told = hidden.told();
    this.beginning =
        told.isEmpty()
            ? nothing
            : new Onward(fault.model())
                .told(nothing, told.getAsInt(), hidden.answers().get(told.getAsInt()));
  }

  /**
   * Makes a drill.
   *
   * @param order what is wanted
   * @param fault the order's symptom on its boat and day
   * @throws IllegalArgumentException when the fault is another's, or the order hides a cause that
   *     the boat cannot have
   */
  public static Drill of(DrillOrder order, Fault fault) {
    if (!fault.page().id().equals(order.symptom())
        || !fault.fitting().boat().id().equals(order.boat())
        || !fault.fitting().on().equals(order.on())) {
      throw new IllegalArgumentException("the fault is not the one that was ordered: " + order);
    }
    return new Drill(order, fault, HiddenFault.draw(fault, order));
  }

  /**
   * The next seed that draws a cause, so that a trainer can choose it and an order need not name
   * it.
   *
   * @param fault the fault
   * @param cause cause id
   * @param from the first seed to try, 0 or more
   * @return empty when a million seeds do not draw it, as of a cause that is as good as ruled out
   * @throws IllegalArgumentException when this boat's list has no such cause
   */
  public static OptionalLong seedFor(Fault fault, String cause, long from) {
    int wanted = fault.causeNumber(cause);
    for (long seed = from; seed < from + TRIES; seed++) {
      if (HiddenFault.cause(fault, seed) == wanted) {
        return OptionalLong.of(seed);
      }
    }
    return OptionalLong.empty();
  }

  /** What it was made from. */
  public DrillOrder order() {
    return order;
  }

  /** The symptom on its boat, with what everything costs. */
  public Fault fault() {
    return fault;
  }

  /** What the owner writes, in lines. */
  public List<String> letter() {
    return letter;
  }

  /** Changes when a figure of the fault does: a result holds for one stamp alone. */
  public String stamp() {
    return stamp;
  }

  /** What is the matter; not to be shown before the end. */
  public FaultCause hiddenCause() {
    return fault.causes().get(hidden.cause());
  }

  /** What a check says in this drill; empty when it can't be told. For a trainer's key. */
  public Optional<String> answer(FaultCheck check) {
    int answer = hidden.answers().get(fault.checkNumber(check.id()));
    return answer == HiddenFault.CANT_TELL
        ? Optional.empty()
        : Optional.of(check.answers().get(answer));
  }

  /** Whether the mend of this cause cures the fault in this drill. For a trainer's key. */
  public boolean isCuredBy(FaultCause cause) {
    return cause.equals(hiddenCause()) && hidden.cures();
  }

  /** The check whose answer the owner tells unasked. */
  public Optional<FaultCheck> toldUnasked() {
    return hidden.told().isEmpty()
        ? Optional.empty()
        : Optional.of(fault.checks().get(hidden.told().getAsInt()));
  }

  /** All cautions that can come up in it, each once. */
  public List<WorkCaution> cautions() {
    return StepTaker.cautions(fault);
  }

  /** Where it begins, as numbers, with what the owner has told. */
  public Situation beginning() {
    return beginning;
  }
}
