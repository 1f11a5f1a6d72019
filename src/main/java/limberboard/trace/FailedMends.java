package limberboard.trace;

import java.util.Arrays;
import java.util.BitSet;
import limberboard.effort.Normalised;

/**
 * What mends that did not cure say about the causes.
 *
 * <p>A mend that did not cure speaks against its cause by as much as it usually cures. But it may
 * also have done its work, and the fault is still there because there were two: where one thing
 * lets go, another often has too. Of what the mend should have cured, one part in five is taken for
 * that and given to the other causes, as likely among themselves as they stood, so that what was
 * learnt stays. Mended causes get nothing of it. One part in five is an estimate: common practice,
 * no source.
 *
 * @param fault the fault
 * @param failed numbers of the causes whose mends were tried
 */
record FailedMends(Fault fault, BitSet failed) {
  /** How often a second fault is there as well. */
  static final double SECOND = 0.2;

  /** The causes' chances, from what they are by the answers alone. */
  double[] chances(double[] byAnswers) {
    if (failed.isEmpty()) {
      return byAnswers;
    }
    double[] weights = byAnswers.clone();
    double others = others(byAnswers);
    double more = others > 0 ? 1 + SECOND * cured(byAnswers) / others : 1;
    for (int cause = 0; cause < weights.length; cause++) {
      weights[cause] *= failed.get(cause) ? 1 - fault.causes().get(cause).cures() : more;
    }
    return Arrays.stream(weights).allMatch(weight -> weight == 0)
        ? byAnswers
        : Normalised.ofOne(weights);
  }

  /** The chance that the mend of one cause was right and a second fault is there, 0 to 1. */
  double secondFault(double[] byAnswers) {
    double second = others(byAnswers) > 0 ? SECOND * cured(byAnswers) : 0;
    double one = 0;
    for (int cause = 0; cause < byAnswers.length; cause++) {
      one +=
          failed.get(cause)
              ? byAnswers[cause] * (1 - fault.causes().get(cause).cures())
              : byAnswers[cause];
    }
    return second > 0 ? second / (one + second) : 0;
  }

  private double cured(double[] byAnswers) {
    return failed.stream()
        .mapToDouble(cause -> byAnswers[cause] * fault.causes().get(cause).cures())
        .sum();
  }

  private double others(double[] byAnswers) {
    double others = 0;
    for (int cause = 0; cause < byAnswers.length; cause++) {
      others += failed.get(cause) ? 0 : byAnswers[cause];
    }
    return others;
  }
}
