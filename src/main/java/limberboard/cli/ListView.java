package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCautions;
import limberboard.cli.TraceView.CautionView;
import limberboard.library.Library;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Model.Zone;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Problem;
import limberboard.upkeep.Task;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.ListPart;
import limberboard.upkeep.list.WorkList;

/** A list of work as {@code list --json} prints it; the keys are documented and stay. */
record ListView(
    String list,
    String boat,
    String on,
    List<CautionView> cautions,
    int workMinutes,
    double accessMinutes,
    List<PartView> parts,
    List<String> problems) {

  /** One part. */
  record PartView(
      String phase,
      int workMinutes,
      double accessMinutes,
      boolean bestProven,
      List<LineView> lines) {
    static PartView of(ListPart part, WorkCautions cautions) {
      return new PartView(
          part.phase().word(),
          part.workMinutes(),
          part.accessMinutes(),
          part.bestProven(),
          part.lines().stream().map(line -> LineView.of(line, cautions)).toList());
    }
  }

  /** What is opened or closed. */
  record AccessView(String id, String title, double minutes) {
    static List<AccessView> of(List<Access> accesses) {
      return accesses.stream()
          .map(access -> new AccessView(access.id(), access.title(), access.minutes()))
          .toList();
    }
  }

  /** What is done with a round. */
  record WithView(String page, String title, int minutes) {
    static WithView of(Task task) {
      return new WithView(task.work().id(), task.work().title(), task.minutes());
    }
  }

  /** One line. */
  record LineView(
      int number,
      String page,
      String title,
      Optional<String> zone,
      int minutes,
      List<WithView> with,
      String skill,
      String why,
      Optional<String> due,
      Optional<String> good,
      Optional<String> bad,
      List<AccessView> open,
      List<AccessView> close,
      Optional<String> movedFrom,
      List<String> cautions) {
    static LineView of(ListLine line, WorkCautions cautions) {
      Procedure procedure = line.work().details();
      return new LineView(
          line.number(),
          line.work().id(),
          line.work().title(),
          line.zone().map(Zone::id),
          line.minutes(),
          line.task().with().stream().map(WithView::of).toList(),
          procedure.skill().word(),
          line.task().why().said(),
          line.task().due().map(Object::toString),
          procedure.lookFor().map(Procedure.LookFor::good),
          procedure.lookFor().map(Procedure.LookFor::bad),
          AccessView.of(line.open()),
          AccessView.of(line.close()),
          line.moved().map(moved -> moved.from().word()),
          CautionView.ids(cautions.of(line.work())));
    }
  }

  /**
   * The view.
   *
   * @param list the list
   * @param library where its cautions are looked up
   */
  static ListView of(WorkList list, Library library) {
    WorkCautions cautions = WorkCautions.on(library, list.fitting());
    return new ListView(
        list.kind().word(),
        list.fitting().boat().id(),
        list.fitting().on().toString(),
        CautionView.of(
            WorkCautions.joined(list.lines().map(line -> cautions.of(line.work())).toList())),
        list.workMinutes(),
        list.accessMinutes(),
        list.parts().stream().map(part -> PartView.of(part, cautions)).toList(),
        list.problems().stream().map(Problem::toString).toList());
  }
}
