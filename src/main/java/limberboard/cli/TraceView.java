package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Caution;
import limberboard.library.Check;
import limberboard.library.Library;
import limberboard.library.Page;
import limberboard.library.Symptom;
import limberboard.trace.Contradiction;
import limberboard.trace.NextStep;
import limberboard.trace.Ranked;
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
    Optional<String> secondFault) {

  /** A caution that comes before any question. */
  record CautionView(
      String id, String title, String danger, @JsonProperty("do") List<String> act, String seek) {
    /** Those that come before everything else of a symptom. */
    static List<CautionView> first(Symptom symptom, Library library) {
      return of(symptom.first(), library);
    }

    /** Those with these ids, as far as they have a page. */
    static List<CautionView> of(List<String> ids, Library library) {
      return ids.stream().flatMap(id -> library.caution(id).stream()).map(CautionView::of).toList();
    }

    private static CautionView of(Page<Caution> page) {
      Caution caution = page.details();
      return new CautionView(
          page.id(), page.title(), caution.danger(), caution.act(), caution.seek());
    }
  }

  /** A cause with its chance, 0 to 1. */
  record CauseView(String id, String title, double chance, String word, String mend, String from) {
    static CauseView of(Ranked ranked) {
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
      List<String> open) {
    static StepView of(NextStep step) {
      Optional<Check> check =
          step instanceof NextStep.DoCheck made
              ? Optional.of(made.check().check())
              : Optional.empty();
      return new StepView(
          step.kind(),
          step.id(),
          step.text(),
          step.minutes(),
          step.why(),
          check.map(Check::how).orElse(""),
          check.map(Check::answers).orElse(List.of()),
          step.toOpen().stream().map(access -> access.title()).toList());
    }
  }

  static TraceView of(Trace trace, Library library) {
    return new TraceView(
        trace.fault().page().id(),
        trace.fault().fitting().boat().id(),
        CautionView.first(trace.fault().page().details(), library),
        trace.ranking().stream().map(CauseView::of).toList(),
        StepView.of(trace.next()),
        trace.expectedMinutes(),
        trace.atLeastMinutes(),
        trace.done(),
        trace.settled(),
        trace.answers(),
        trace.explain(),
        trace.contradiction().map(Contradiction::text),
        trace.secondFault().map(SecondFault::text));
  }
}
