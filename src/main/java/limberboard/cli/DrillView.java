package limberboard.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.drill.Drill;
import limberboard.drill.DrillRun;
import limberboard.drill.StepDone;
import limberboard.library.page.Check;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Seen;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;

/** A drill as {@code drill … --json} prints it; the keys are documented and stay. No chances. */
record DrillView(
    String symptom,
    String title,
    String boat,
    String boatName,
    String model,
    int built,
    Map<String, String> equipment,
    String water,
    String use,
    String on,
    long seed,
    int hints,
    String stamp,
    List<String> letter,
    List<TraceView.CautionView> cautions,
    List<String> first,
    List<AskView> checks,
    List<MendView> mends,
    List<AccessView> access,
    double yardMinutes,
    double yardSearchMinutes) {

  /** Something that can be opened. */
  record AccessView(String id, String title, double minutes) {
    static AccessView of(Access access) {
      return new AccessView(access.id(), access.title(), access.minutes());
    }
  }

  /** A check that can be made. */
  record AskView(
      String id,
      String ask,
      String how,
      List<String> answers,
      double minutes,
      List<String> access,
      List<String> cautions,
      String skill,
      boolean comesFirst,
      Optional<String> makeSafe) {
    static AskView of(FaultCheck check) {
      Check page = check.check();
      return new AskView(
          check.id(),
          check.ask(),
          page.how(),
          check.answers(),
          check.minutes(),
          check.access().stream().map(Access::id).toList(),
          ids(check.cautions()),
          page.skill().word(),
          page.comesFirst(),
          page.safety());
    }
  }

  /** A cause that can be mended, or named to the yard. */
  record MendView(
      String id,
      String title,
      String mend,
      String mendTitle,
      double minutes,
      List<String> access,
      List<String> cautions,
      String skill,
      boolean shownAtOnce) {
    static MendView of(FaultCause cause) {
      return new MendView(
          cause.id(),
          cause.title(),
          cause.mend(),
          cause.mendTitle(),
          cause.mendMinutes(),
          cause.mendAccess().stream().map(Access::id).toList(),
          ids(cause.mendCautions()),
          cause.mendSkill().word(),
          cause.seen() == Seen.AT_ONCE);
    }
  }

  /** What came of a step. */
  record StepView(
      String step,
      String reply,
      String said,
      double minutes,
      double total,
      List<String> open,
      List<TraceView.CautionView> leftOut,
      boolean ended) {
    static StepView of(DrillRun run, String hint) {
      StepDone last = run.last().orElseThrow();
      return new StepView(
          last.step().text(),
          last.reply().kind().word(),
          hint.isEmpty() ? last.reply().said() : hint,
          last.minutes(),
          run.minutes(),
          run.open(),
          TraceView.CautionView.of(last.unheeded()),
          run.ended());
    }
  }

  static List<String> ids(List<WorkCaution> cautions) {
    return cautions.stream().map(WorkCaution::id).distinct().toList();
  }

  static DrillView of(Drill drill) {
    Boat boat = drill.fault().fitting().boat();
    return new DrillView(
        drill.order().symptom(),
        drill.fault().page().title(),
        boat.id(),
        boat.name(),
        boat.model().title(),
        boat.built(),
        boat.equipment(),
        boat.water().word(),
        boat.use().word(),
        drill.order().on().toString(),
        drill.order().seed(),
        drill.order().hints(),
        drill.stamp(),
        drill.letter(),
        TraceView.CautionView.of(drill.cautions()),
        ids(drill.fault().first()),
        drill.fault().checks().stream().map(AskView::of).toList(),
        drill.fault().causes().stream()
            .filter(cause -> !cause.isSomethingElse())
            .map(MendView::of)
            .toList(),
        drill.fault().access().stream().map(AccessView::of).toList(),
        drill.fault().yardMinutes(),
        drill.fault().searchMinutes());
  }
}
