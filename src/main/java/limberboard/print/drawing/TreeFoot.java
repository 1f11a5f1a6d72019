package limberboard.print.drawing;

import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.print.cut.Cautions;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.trace.TreeCut;

/** What stands below a drawn tree: the whole text of each caution that stands above it in short. */
final class TreeFoot {
  private static final double SIZE = 13;
  private static final double GAP = 14;

  private final double x;
  private final double top;
  private final List<Line> title;
  private final CautionBoxes cautions;

  /** A foot that begins at a height and goes from x to the right. */
  TreeFoot(TreeCut cut, double x, double right, double top) {
    this.x = x;
    this.top = top;
    this.cautions = new CautionBoxes(x, right);
    List<WorkCaution> others =
        cut.cautions().stream().filter(caution -> !caution.emergency()).toList();
    this.title = others.isEmpty() ? List.of() : List.of(new Line(Cautions.IN_FULL, SIZE, true));
    cautions.inFull(others, top + title.stream().mapToDouble(Line::height).sum() + GAP / 2);
  }

  void draw(SvgPen pen) {
    pen.lines(title, x, top);
    cautions.draw(new TreeSvg(pen));
  }

  /** The lower edge of the foot. */
  double bottom() {
    return cautions.bottom();
  }
}
