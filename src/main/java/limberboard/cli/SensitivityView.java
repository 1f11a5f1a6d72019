package limberboard.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.review.DecisiveEstimate;
import limberboard.trace.review.Sensitivity;

/** Which estimates are worth measuring, as {@code --json} prints it. */
record SensitivityView(
    String symptom,
    String boat,
    StepView first,
    double expectedMinutes,
    double atLeastMinutes,
    int changes,
    List<EstimateView> estimates) {

  static SensitivityView of(Sensitivity sensitivity) {
    Trace at = sensitivity.at();
    return new SensitivityView(
        at.fault().page().id(),
        at.fault().fitting().boat().id(),
        StepView.of(at.next()),
        at.expectedMinutes(),
        at.atLeastMinutes(),
        sensitivity.changes(),
        sensitivity.estimates().stream().map(EstimateView::of).toList());
  }

  /** A step as {@code --json} prints it. */
  record StepView(String kind, String id) {
    static StepView of(NextStep step) {
      return new StepView(step.kind(), step.id());
    }
  }

  /** An estimate as {@code --json} prints it. */
  record EstimateView(
      String kind,
      String cause,
      Optional<String> check,
      Optional<String> answer,
      double value,
      String wrong,
      double instead,
      StepView then,
      double minutesLost) {
    static EstimateView of(DecisiveEstimate estimate) {
      return new EstimateView(
          estimate.kind(),
          estimate.cause().id(),
          estimate.found().map(found -> found.check().id()),
          estimate.found().map(DecisiveEstimate.Answer::answer),
          estimate.value(),
          estimate.wrong().name().toLowerCase(Locale.ROOT),
          estimate.instead(),
          StepView.of(estimate.then()),
          estimate.minutesLost());
    }
  }
}
