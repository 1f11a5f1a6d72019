package limberboard.trace;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
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
 * <i>w₀</i> (the page's figure, or <i>W</i> ÷ 20), the number of counted cases of each cause
 * <i>n</i> and of all <i>N</i>, the strength of the estimate <i>S</i> = {@value #CASES_WORTH} and
 * the product <i>f</i> of the factors that hold for this boat,
 *
 * <pre>chance ∝ f × (S × w ÷ (W + w₀) + n) ÷ (S + N)</pre>
 *
 * <p>which is the mean of a Dirichlet distribution, with the factors applied to estimate and cases
 * alike; they are divided by their sum at the end. Something else has the factor 1. Cases of
 * another symptom, and cases whose cause this boat cannot have, are not counted.
 */
final class FaultPriors {
  /** How many recorded cases the workshop's estimate is worth. */
  static final int CASES_WORTH = 20;

  /** The weight of something else is the listed causes' sum divided by this, unless given. */
  static final double LISTED_TO_UNLISTED = 20;

  private final List<Cause> causes;
  private final Fitting fitting;
  private final double somethingElse;
  private final boolean somethingElseGiven;
  private final Map<String, Long> counts;
  private final long counted;

  FaultPriors(
      Page<Symptom> page, List<Cause> causes, Fitting fitting, List<RecordedCase> allCases) {
    this.causes = causes;
    this.fitting = fitting;
    double listed = listed();
    this.somethingElseGiven = page.details().somethingElse().isPresent();
    double unlisted = page.details().somethingElse().orElse(listed / LISTED_TO_UNLISTED);
    this.somethingElse = UsableFigures.positive(unlisted);
    Set<String> possible = new HashSet<>(causes.stream().map(Cause::id).toList());
    possible.add(Symptom.SOMETHING_ELSE);
    this.counts =
        allCases.stream()
            .filter(found -> found.symptom().equals(page.id()))
            .map(RecordedCase::cause)
            .filter(possible::contains)
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    this.counted = counts.values().stream().mapToLong(Long::longValue).sum();
  }

  /** The chances of the causes, in order, and of something else at the end; they sum to 1. */
  double[] chances() {
    double all = listed() + somethingElse;
    double[] weights = new double[causes.size() + 1];
    for (int i = 0; i < causes.size(); i++) {
      Cause cause = causes.get(i);
      weights[i] =
          factor(cause) * blended(UsableFigures.positive(cause.weight()) / all, cause.id());
    }
    weights[causes.size()] = blended(somethingElse / all, Symptom.SOMETHING_ELSE);
    return Normalised.ofOne(weights);
  }

  private double listed() {
    return causes.stream().mapToDouble(cause -> UsableFigures.positive(cause.weight())).sum();
  }

  private double blended(double estimate, String id) {
    return (CASES_WORTH * estimate + counts.getOrDefault(id, 0L)) / (CASES_WORTH + counted);
  }

  private double factor(Cause cause) {
    return cause.moreLikely().stream()
        .filter(factor -> fitting.fits(factor.when()))
        .mapToDouble(factor -> UsableFigures.positive(factor.times()))
        .reduce(1, (a, b) -> UsableFigures.positive(a * b));
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
    if (counted == 0) {
      return estimate;
    }
    long own = counts.getOrDefault(id, 0L);
    String cases =
        CountWords.of(counted, "recorded case")
            + " ("
            + (own == 0 ? "none" : own)
            + " with this cause)";
    return counted > CASES_WORTH ? cases + " and " + estimate : estimate + " and " + cases;
  }
}
