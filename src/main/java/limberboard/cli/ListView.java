package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.cli.TraceView.CautionView;
import limberboard.library.Library;
import limberboard.library.Model.Access;
import limberboard.library.Model.Zone;
import limberboard.library.Problem;
import limberboard.library.Procedure;
import limberboard.print.Block;
import limberboard.print.CutPage;
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
    static PartView of(ListPart part) {
      return new PartView(
          part.phase().word(),
          part.workMinutes(),
          part.accessMinutes(),
          part.bestProven(),
          part.lines().stream().map(LineView::of).toList());
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

  /** One line. */
  record LineView(
      int number,
      String page,
      String title,
      Optional<String> zone,
      int minutes,
      String skill,
      String why,
      Optional<String> due,
      Optional<String> good,
      Optional<String> bad,
      List<AccessView> open,
      List<AccessView> close,
      Optional<String> movedFrom) {
    static LineView of(ListLine line) {
      Procedure procedure = line.work().details();
      return new LineView(
          line.number(),
          line.work().id(),
          line.work().title(),
          line.zone().map(Zone::id),
          line.minutes(),
          procedure.skill().word(),
          line.task().why(),
          line.task().due().map(Object::toString),
          procedure.lookFor().map(Procedure.LookFor::good),
          procedure.lookFor().map(Procedure.LookFor::bad),
          AccessView.of(line.open()),
          AccessView.of(line.close()),
          line.moved().map(moved -> moved.from().word()));
    }
  }

  /**
   * The view.
   *
   * @param sheet the list as a sheet, whose cautions are taken
   */
  static ListView of(WorkList list, CutPage sheet, Library library) {
    List<String> cautions = sheet.cautions().stream().map(Block.CautionBox::id).toList();
    return new ListView(
        list.kind().word(),
        list.fitting().boat().id(),
        list.fitting().on().toString(),
        CautionView.of(cautions, library),
        list.workMinutes(),
        list.accessMinutes(),
        list.parts().stream().map(PartView::of).toList(),
        list.problems().stream().map(Problem::toString).toList());
  }
}
