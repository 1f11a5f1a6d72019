package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.RecordedCase;
import limberboard.boat.WorkCaution;
import limberboard.cases.SimilarCases;
import limberboard.library.page.Caution;
import limberboard.library.page.Check;
import limberboard.trace.Contradiction;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.SecondFault;
import limberboard.trace.Trace;

/** A trace's state as {@code trace --json} prints it; the keys are documented and stay. */
record TraceView(
    String symptom,
    String boat,
    List<CautionView> cautions,
    List<CauseView> causes,
    StepView next,
    double expectedMinutes,
    double atLeastMinutes,
    boolean done,
    boolean settled,
    Map<String, String> answers,
    Optional<String> changed,
    Optional<String> contradiction,
    Optional<String> secondFault,
    List<EarlierView> earlier) {
  /** How many earlier cases are shown. */
  static final int MOST_EARLIER = 3;

  /** An earlier case that is like this trace. */
  record EarlierView(String id, Optional<String> cause, double likeness, String reason) {
    static EarlierView of(SimilarCases.Similar similar) {
      return new EarlierView(
          similar.recorded().id(),
          similar.recorded().cause(),
          similar.likeness(),
          similar.reason());
    }
  }

  /** A caution that comes before any question. */
  record CautionView(
      String id,
      String title,
      @JsonProperty("short") String brief,
      String rule,
      boolean grave,
      boolean emergency,
      Optional<String> question,
      String danger,
      @JsonProperty("do") List<String> act,
      String seek) {
    /** All of these. */
    static List<CautionView> of(List<WorkCaution> cautions) {
      return cautions.stream().map(CautionView::of).toList();
    }

    /** Their ids alone, where the whole stands elsewhere in the same output. */
    static List<String> ids(List<WorkCaution> cautions) {
      return cautions.stream().map(WorkCaution::id).toList();
    }

    private static CautionView of(WorkCaution caution) {
      Caution details = caution.page().details();
      return new CautionView(
          caution.id(),
          caution.title(),
          caution.danger(),
          caution.rule(),
          caution.grave(),
          caution.emergency(),
          caution.question(),
          details.danger(),
          details.act(),
          details.seek());
    }
  }

  /** A cause with its chance, 0 to 1. */
  record CauseView(String id, String title, double chance, String word, String mend, String from) {
    static CauseView of(RankedCause ranked) {
      return new CauseView(
          ranked.cause().id(),
          ranked.cause().title(),
          ranked.chance(),
          ranked.word(),
          ranked.cause().mend(),
          ranked.cause().from());
    }
  }

  /** What to do next. */
  record StepView(
      String kind,
      String id,
      String text,
      double minutes,
      String why,
      String how,
      List<String> answers,
      List<String> open,
      List<CautionView> cautions,
      Optional<String> makeSafe,
      Optional<String> from) {
    static StepView of(NextStep step) {
      Optional<Check> check =
          step instanceof NextStep.DoCheck made
              ? Optional.of(made.check().check())
              : Optional.empty();
      List<String> safe = step instanceof NextStep.MakeSafe ? List.of(Check.MADE_SAFE) : List.of();
      return new StepView(
          step.kind(),
          step.id(),
          step.text(),
          step.minutes(),
          step.why(),
          step instanceof NextStep.MakeSafe made ? made.how() : check.map(Check::how).orElse(""),
          check.map(Check::answers).orElse(safe),
          step.toOpen().stream().map(access -> access.title()).toList(),
          CautionView.of(step.cautions()),
          step.safety(),
          step instanceof NextStep.DoCheck made
              ? Optional.of(made.check().from())
              : Optional.empty());
    }
  }

  /** Earlier cases like a trace, the likest first. */
  static List<SimilarCases.Similar> earlier(Trace trace, List<RecordedCase> cases) {
    return SimilarCases.of(
            trace.fault().page().id(),
            trace.fault().page().details(),
            trace.fault().fitting(),
            trace.answers(),
            cases)
        .stream()
        .limit(MOST_EARLIER)
        .toList();
  }

  static TraceView of(Trace trace, List<RecordedCase> cases) {
    return new TraceView(
        trace.fault().page().id(),
        trace.fault().fitting().boat().id(),
        CautionView.of(trace.fault().first()),
        trace.ranking().stream().map(CauseView::of).toList(),
        StepView.of(trace.next()),
        trace.expectedMinutes(),
        trace.atLeastMinutes(),
        trace.done(),
        trace.settled(),
        trace.answers(),
        trace.explain(),
        trace.contradiction().map(Contradiction::text),
        trace.secondFault().map(SecondFault::text),
        earlier(trace, cases).stream().map(EarlierView::of).toList());
  }
}
