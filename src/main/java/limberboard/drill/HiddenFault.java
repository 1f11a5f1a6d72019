package limberboard.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import limberboard.effort.AnswerModel;
import limberboard.effort.EffortModel;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;

/**
 * What is really the matter in a drill, drawn once: the cause, the answer to each check, and
 * whether mending that cause cures it. Causes are drawn by the boat's chances, answers by how
 * likely they are under the cause. Given the seed, an answer depends on cause and check alone.
 *
 * @param cause number of the cause
 * @param answers for each check the number of its answer, {@link #CANT_TELL} where it can't be told
 * @param cures whether mending the cause cures it
 * @param told number of a check whose answer the owner tells unasked, if there is one
 */
record HiddenFault(int cause, List<Integer> answers, boolean cures, OptionalInt told) {
  static final int CANT_TELL = -1;
  private static final double OWNER_TELLS = 0.6;
  private static final double QUICK = 3;

  HiddenFault {
    answers = List.copyOf(answers);
  }

  /**
   * Draws what an order leaves to chance.
   *
   * @throws IllegalArgumentException when it hides a cause that this boat cannot have
   */
  static HiddenFault draw(Fault fault, DrillOrder order) {
    int cause = order.hides().isPresent() ? ordered(fault, order) : cause(fault, order.seed());
    return draw(fault, order.seed(), cause);
  }

  private static int ordered(Fault fault, DrillOrder order) {
    List<String> ids = fault.causes().stream().map(FaultCause::id).toList();
    return HiddenNumber.cause(order.hides().getAsInt(), order.symptom(), order.seed(), ids)
        .map(fault::causeNumber)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    order.hides().getAsInt()
                        + " hides no cause that "
                        + fault.fitting().boat().name()
                        + " can have"));
  }

  /** The number of the cause that a seed draws. */
  static int cause(Fault fault, long seed) {
    AnswerModel model = fault.model().answers();
    double[] priors = new double[model.causes()];
    for (int i = 0; i < priors.length; i++) {
      priors[i] = model.prior(i);
    }
    return new Drawing(seed).one("cause", priors);
  }

  /** Draws everything but the cause, which is given. */
  static HiddenFault draw(Fault fault, long seed, int cause) {
    Drawing drawing = new Drawing(seed);
    EffortModel model = fault.model();
    List<Integer> answers = new ArrayList<>();
    for (int check = 0; check < fault.checks().size(); check++) {
      String name = fault.checks().get(check).id();
      if (drawing.happens("can't tell " + name, model.checks().get(check).cantTell())) {
        answers.add(CANT_TELL);
      } else {
        double[] shares = new double[model.answers().answers(check)];
        for (int i = 0; i < shares.length; i++) {
          shares[i] = model.answers().likelihood(check, i, cause);
        }
        answers.add(drawing.one("answer " + name, shares));
      }
    }
    boolean cures = drawing.happens("cures", model.mends().get(cause).cures());
    return new HiddenFault(cause, answers, cures, told(fault, answers, drawing));
  }

  /**
   * What an owner has looked at before writing: quick, open to the eye, harmless, and with words of
   * his own for every answer, so that whether he tells it says nothing about the answer.
   */
  private static OptionalInt told(Fault fault, List<Integer> answers, Drawing drawing) {
    List<Integer> can = new ArrayList<>();
    for (int check = 0; check < answers.size(); check++) {
      if (answers.get(check) != CANT_TELL && isTold(fault.checks().get(check))) {
        can.add(check);
      }
    }
    return can.isEmpty() || !drawing.happens("owner tells", OWNER_TELLS)
        ? OptionalInt.empty()
        : OptionalInt.of(drawing.one("what the owner tells", can));
  }

  private static boolean isTold(FaultCheck check) {
    return check.minutes() <= QUICK
        && check.access().isEmpty()
        && check.cautions().isEmpty()
        && !check.check().comesFirst()
        && check.check().skill().ownerMay()
        && check.answers().stream()
            .noneMatch(answer -> check.check().saidAs().getOrDefault(answer, List.of()).isEmpty());
  }
}
