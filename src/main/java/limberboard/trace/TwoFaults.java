package limberboard.trace;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.effort.AnswerModel;
import limberboard.words.ChanceWords;
import limberboard.words.PerCent;

/**
 * Weighs whether two faults are there at once, which a trace otherwise takes not to be so.
 *
 * <p>Two signs are looked for. A mend that usually cures did not: see {@link FailedMends}. Or the
 * answers fit two causes together much better than any one: with two causes each check looks at one
 * or the other as likely as not, so that an answer is as likely as it is under the two on average;
 * pairs are as likely as their causes' priors multiplied; and of all faults one in five is a pair,
 * which is an estimate: common practice, no source.
 *
 * @param fault the fault
 * @param answers for each check its answer's number, or {@link AnswerModel#NOT_ANSWERED}
 * @param failed numbers of the causes whose mends were tried
 */
record TwoFaults(Fault fault, int[] answers, BitSet failed) {
  /** From this chance on a second fault is worth the remark. */
  private static final double WORTH_SAYING = 0.2;

  /** Pairs are looked for among this many of the causes that fit the answers best. */
  private static final int LIKELIEST = 40;

  /** The remark, when there is a sign of a second fault. */
  Optional<SecondFault> found() {
    double[] byAnswers = model().chances(answers);
    return afterMend(byAnswers).or(() -> ofPair(byAnswers));
  }

  private Optional<SecondFault> afterMend(double[] byAnswers) {
    FailedMends mends = new FailedMends(fault, failed);
    double chance = mends.secondFault(byAnswers);
    if (chance < WORTH_SAYING) {
      return Optional.empty();
    }
    int mended =
        failed.stream()
            .boxed()
            .max(Comparator.comparingDouble(cause -> byAnswers[cause]))
            .orElseThrow();
    double[] now = mends.chances(byAnswers);
    int next =
        IntStream.range(0, now.length)
            .filter(cause -> !failed.get(cause))
            .boxed()
            .max(Comparator.comparingDouble(cause -> now[cause]))
            .orElseThrow();
    String text =
        ("If “%s” was mended well, there is a second fault: that is %s (%s). What was found so far"
                + " still counts; of the other causes, “%s” is the likeliest now (%s).")
            .formatted(
                title(mended),
                ChanceWords.of(chance),
                PerCent.words(chance),
                title(next),
                PerCent.words(now[next]));
    return Optional.of(new SecondFault(text, chance));
  }

  private Optional<SecondFault> ofPair(double[] byAnswers) {
    if (!new Clash(fault, answers).isThere(byAnswers)) {
      return Optional.empty();
    }
    List<Integer> causes = likeliest();
    double best = -1;
    int[] pair = {0, 0};
    double pairs = 0;
    double priors = 0;
    for (int i = 0; i < causes.size(); i++) {
      for (int j = 0; j < i; j++) {
        double prior = model().prior(causes.get(i)) * model().prior(causes.get(j));
        double weight = prior * together(causes.get(i), causes.get(j));
        priors += prior;
        pairs += weight;
        if (weight > best) {
          best = weight;
          pair = new int[] {causes.get(j), causes.get(i)};
        }
      }
    }
    double one = (1 - FailedMends.SECOND) * Math.exp(model().logEvidence(answers));
    double two = priors > 0 ? FailedMends.SECOND * pairs / priors : 0;
    double chance = two > 0 ? two / (one + two) : 0;
    if (chance < WORTH_SAYING) {
      return Optional.empty();
    }
    String text =
        ("It may be two faults at once: that is %s (%s). The pair of causes that fits the answers"
                + " best is “%s” and “%s”. Mend the likelier one first, then look again.")
            .formatted(
                ChanceWords.of(chance), PerCent.words(chance), title(pair[0]), title(pair[1]));
    return Optional.of(new SecondFault(text, chance));
  }

  /**
   * The listed causes that could explain the most answers, so that one that explains half of them
   * well is kept even though the other half rules it out.
   */
  private List<Integer> likeliest() {
    return IntStream.range(0, model().causes() - 1)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer cause) -> -explained(cause)))
        .limit(LIKELIEST)
        .toList();
  }

  private double explained(int cause) {
    double sum = 0;
    for (int check = 0; check < answers.length; check++) {
      if (answers[check] != AnswerModel.NOT_ANSWERED) {
        sum += model().likelihood(check, answers[check], cause);
      }
    }
    return sum * model().prior(cause);
  }

  /** How likely the answers are when these two are there. */
  private double together(int one, int other) {
    double product = 1;
    for (int check = 0; check < answers.length; check++) {
      if (answers[check] != AnswerModel.NOT_ANSWERED) {
        product *=
            (model().likelihood(check, answers[check], one)
                    + model().likelihood(check, answers[check], other))
                / 2;
      }
    }
    return product;
  }

  private String title(int cause) {
    return fault.causes().get(cause).title();
  }

  private AnswerModel model() {
    return fault.model().answers();
  }
}
