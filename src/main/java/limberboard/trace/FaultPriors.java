package limberboard.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import limberboard.boat.Fitting;
import limberboard.cases.CaseWeights;
import limberboard.cases.CountedCases;
import limberboard.effort.Normalised;
import limberboard.library.page.Cause;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.words.CountWords;

/**
 * How likely each cause is on one boat before any answer: the workshop's weights, blended with the
 * recorded cases, times this boat's factors.
 *
 * <p>With the fitting causes' weights <i>w</i>, their sum <i>W</i>, the weight of something else
 * <i>w₀</i> (the page's figure, or <i>W</i> ÷ 20), what the counted cases of each cause are worth
 * <i>n</i> and all together <i>N</i>, the strength of the estimate <i>S</i> and the product
 * <i>f</i> of the factors that hold for this boat,
 *
 * <pre>chance ∝ f × (S × w ÷ (W + w₀) + n) ÷ (S + N)</pre>
 *
 * <p>which is the mean of a Dirichlet distribution, with the factors applied to estimate and cases
 * alike; they are divided by their sum at the end. Something else has the factor 1. Which cases
 * count, how much, and the strength are decided by {@link CountedCases} and {@link
 * limberboard.cases.CaseWeights}.
 */
final class FaultPriors {
  /** The weight of something else is the listed causes' sum divided by this, unless given. */
  static final double LISTED_TO_UNLISTED = 20;

  private static final double TENTH = 0.1;

  private final List<Cause> causes;
  private final Fitting fitting;
  private final double somethingElse;
  private final boolean somethingElseGiven;
  private final CountedCases cases;

  FaultPriors(Page<Symptom> page, List<Cause> causes, Fitting fitting, CountedCases cases) {
    this.causes = causes;
    this.fitting = fitting;
    double listed = listed();
    this.somethingElseGiven = page.details().somethingElse().isPresent();
    double unlisted = page.details().somethingElse().orElse(listed / LISTED_TO_UNLISTED);
    this.somethingElse = UsableFigures.positive(unlisted);
    this.cases = cases;
  }

  /** The chances of the causes, in order, and of something else at the end; they sum to 1. */
  double[] chances() {
    double all = listed() + somethingElse;
    List<String> ids = new ArrayList<>();
    double[] estimate = new double[causes.size() + 1];
    for (int i = 0; i < causes.size(); i++) {
      ids.add(causes.get(i).id());
      estimate[i] = UsableFigures.positive(causes.get(i).weight()) / all;
    }
    ids.add(Symptom.SOMETHING_ELSE);
    estimate[causes.size()] = somethingElse / all;
    double[] weights = cases.causes(ids, estimate);
    for (int i = 0; i < causes.size(); i++) {
      weights[i] *= factor(causes.get(i));
    }
    return Normalised.ofOne(weights);
  }

  private double listed() {
    return causes.stream().mapToDouble(cause -> UsableFigures.positive(cause.weight())).sum();
  }

  private double factor(Cause cause) {
    return cause.moreLikely().stream()
        .filter(factor -> fitting.fits(factor.when()))
        .mapToDouble(factor -> UsableFigures.positive(factor.times()))
        .reduce(1, (a, b) -> UsableFigures.positive(a * b));
  }

  /** Where the figures come from, all together. */
  String from() {
    String estimate = "the workshop's estimate";
    return cases.number() == 0
        ? estimate
        : ordered(CountWords.of(cases.number(), "recorded case"), estimate);
  }

  /** What weighs more first. */
  private String ordered(String recorded, String estimate) {
    return cases.worth() > CaseWeights.CAUSES_WORTH
        ? recorded + " and " + estimate
        : estimate + " and " + recorded;
  }

  /** Where a cause's figure comes from. */
  String from(Cause cause) {
    return from(cause.id(), "workshop's estimate");
  }

  /** Where the figure of something else comes from. */
  String fromSomethingElse() {
    return from(
        Symptom.SOMETHING_ELSE,
        somethingElseGiven ? "workshop's estimate" : "one twentieth of the workshop's estimates");
  }

  private String from(String id, String estimate) {
    int counted = cases.number();
    if (counted == 0) {
      return estimate;
    }
    int own = cases.number(id);
    String recorded =
        CountWords.of(counted, "recorded case")
            + " ("
            + (own == 0 ? "none" : own)
            + " with this cause"
            + worth()
            + ")";
    return ordered(recorded, estimate);
  }

  /** What cases of other boats are worth less. */
  private String worth() {
    double worth = cases.worth();
    return worth > cases.number() - TENTH / 2
        ? ""
        : "; counted as "
            + String.format(Locale.ROOT, "%.1f", worth)
            + ", for other boats count less";
  }
}
