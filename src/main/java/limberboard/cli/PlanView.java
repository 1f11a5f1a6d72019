package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCautions;
import limberboard.cli.ListView.AccessView;
import limberboard.cli.TraceView.CautionView;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.library.value.Phase;
import limberboard.print.sheet.PlanWords;
import limberboard.upkeep.Due;
import limberboard.upkeep.plan.DueWork;
import limberboard.upkeep.plan.PlanDay;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.Undone;
import limberboard.upkeep.plan.WorkPlan;

/** A plan as {@code plan --json} prints it; the keys are documented and stay. */
record PlanView(
    String boat,
    String on,
    String until,
    boolean firstTime,
    boolean daysProposed,
    List<String> remarks,
    ProofView proof,
    int mustMinutes,
    List<String> forbids,
    List<CautionView> cautions,
    List<DayView> days,
    List<UndoneView> undone,
    List<String> problems) {

  /** How good it is: dangers as numbers of the scale, and the gap in per cent. */
  record ProofView(long danger, long most, long all, long gap, boolean best) {}

  /** One day. */
  record DayView(String day, int freeMinutes, int minutes, int openMinutes, List<LineView> lines) {
    static DayView of(PlanDay day, WorkCautions cautions) {
      return new DayView(
          day.free().day().toString(),
          day.free().minutes(),
          day.minutes(),
          day.opening(),
          day.lines().stream().map(line -> LineView.of(line, cautions)).toList());
    }
  }

  /** What is due. */
  record WorkView(
      List<String> due,
      String page,
      List<String> pages,
      String title,
      String need,
      String leftUndone,
      Optional<String> runsOut,
      boolean notKnown,
      Optional<String> phase,
      Optional<String> with,
      Optional<String> book) {
    static WorkView of(DueWork work) {
      return new WorkView(
          work.all().stream().map(Due::id).toList(),
          work.work().id(),
          work.pages().stream().map(Page::id).toList(),
          work.title(),
          work.need().word(),
          work.consequence().word(),
          work.lastDay().map(Object::toString),
          work.isNotKnown(),
          work.phase().map(Phase::word),
          work.appointment().map(with -> with.with().word()),
          work.appointment().map(with -> work.book().toString()));
    }
  }

  /** One line. */
  record LineView(
      int number,
      WorkView work,
      List<WorkView> also,
      int minutes,
      List<AccessView> open,
      List<AccessView> close,
      List<String> cautions) {
    static LineView of(PlanLine line, WorkCautions cautions) {
      return new LineView(
          line.line().number(),
          WorkView.of(line.work()),
          line.also().stream().map(WorkView::of).toList(),
          line.minutes(),
          AccessView.of(line.line().open()),
          AccessView.of(line.line().close()),
          CautionView.ids(line.work().cautions(cautions)));
    }
  }

  /** What stays undone. */
  record UndoneView(WorkView work, String because, String why, List<String> cautions) {
    static UndoneView of(Undone undone, WorkCautions cautions) {
      return new UndoneView(
          WorkView.of(undone.work()),
          undone.reason().word(),
          PlanWords.reason(undone),
          CautionView.ids(undone.work().cautions(cautions)));
    }
  }

  /**
   * The view.
   *
   * @param plan the plan
   * @param library where its cautions are looked up
   */
  static PlanView of(WorkPlan plan, Library library) {
    WorkCautions cautions = WorkCautions.on(library, plan.fitting());
    return new PlanView(
        plan.fitting().boat().id(),
        plan.fitting().on().toString(),
        plan.wish().until().toString(),
        plan.wish().firstTime(),
        plan.wish().days().proposed(),
        plan.wish().days().remarks(),
        new ProofView(
            plan.proof().danger(),
            plan.proof().most(),
            plan.proof().all(),
            plan.proof().gap(),
            plan.proof().best()),
        plan.mustMinutes(),
        PlanWords.forbids(plan),
        CautionView.of(
            WorkCautions.joined(plan.lines().map(line -> line.work().cautions(cautions)).toList())),
        plan.days().stream().map(day -> DayView.of(day, cautions)).toList(),
        plan.undone().stream().map(undone -> UndoneView.of(undone, cautions)).toList(),
        plan.problems().stream().map(Problem::toString).toList());
  }
}
