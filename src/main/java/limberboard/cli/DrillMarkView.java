package limberboard.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.drill.DrillStep;
import limberboard.drill.StepDone;
import limberboard.drill.mark.Certainty;
import limberboard.drill.mark.DrillDanger;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.MistakeKind;
import limberboard.drill.mark.StepMark;
import limberboard.trace.NextStep;

/**
 * A mark as {@code drill run} and {@code drill mark} print it; the keys are documented and stay.
 */
record DrillMarkView(
    String symptom,
    String boat,
    long seed,
    Optional<String> student,
    boolean ended,
    String cause,
    String causeTitle,
    double minutes,
    double planMinutes,
    List<String> planSteps,
    double regret,
    double expectedMinutes,
    double atLeastMinutes,
    double doubt,
    boolean yardAtOnce,
    Map<String, Double> mistakes,
    List<DangerView> dangers,
    List<CertaintyView> certainties,
    OptionalDouble brier,
    OptionalDouble logarithmic,
    List<LookedBack> steps) {

  /** Something that could have hurt somebody. */
  record DangerView(String kind, String id, String said) {
    static DangerView of(DrillDanger danger) {
      return new DangerView(danger.kind().word(), danger.id(), danger.said());
    }
  }

  /** A said certainty. */
  record CertaintyView(double said, boolean right, double known) {
    static CertaintyView of(Certainty each) {
      return new CertaintyView(each.said(), each.right(), each.known());
    }
  }

  /** A cause as it stood. */
  record KnownView(String cause, String title, double chance) {}

  /** A step, gone through afterwards. */
  record LookedBack(
      String step,
      String reply,
      String said,
      double minutes,
      List<KnownView> known,
      String best,
      String bestId,
      String bestText,
      String why,
      List<String> bestCautions,
      double regret,
      double doubt,
      Optional<String> mistake,
      List<DangerView> dangers,
      String meaning) {
    static LookedBack of(StepMark mark) {
      StepDone done = mark.done();
      NextStep best = mark.best();
      return new LookedBack(
          done.step().text(),
          done.reply().kind().word(),
          done.reply().said(),
          done.minutes(),
          mark.known().stream()
              .map(each -> new KnownView(each.cause(), each.title(), each.chance()))
              .toList(),
          best.kind(),
          best instanceof NextStep.DoMend mend ? mend.cause().id() : best.id(),
          best.text(),
          best.why(),
          DrillView.ids(best.cautions()),
          mark.regret(),
          mark.doubt(),
          mark.mistake().map(MistakeKind::word),
          mark.dangers().stream().map(DangerView::of).toList(),
          mark.meaning());
    }
  }

  static DrillMarkView of(DrillMark mark, Optional<String> student) {
    Map<String, Double> mistakes = new LinkedHashMap<>();
    mark.mistakes().forEach((kind, cost) -> mistakes.put(kind.word(), cost));
    return new DrillMarkView(
        mark.run().drill().order().symptom(),
        mark.run().drill().order().boat(),
        mark.run().drill().order().seed(),
        student,
        mark.run().ended(),
        mark.run().drill().hiddenCause().id(),
        mark.run().drill().hiddenCause().title(),
        mark.run().minutes(),
        mark.plan().minutes(),
        mark.plan().done().stream().map(StepDone::step).map(DrillStep::text).toList(),
        mark.regret(),
        mark.expected(),
        mark.atLeast(),
        mark.doubt(),
        mark.yardAtOnce(),
        mistakes,
        mark.dangers().stream().map(DangerView::of).toList(),
        mark.certainties().stream().map(CertaintyView::of).toList(),
        Certainty.brier(mark.certainties()),
        Certainty.logarithmic(mark.certainties()),
        mark.steps().stream().map(LookedBack::of).toList());
  }
}
