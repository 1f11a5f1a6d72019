package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.BlockText;
import limberboard.print.text.TextLines;
import limberboard.trace.TreeCut;

/**
 * What stands above a drawn tree: title, boat, what may be an emergency in full, the other cautions
 * in two lines, how to read it, legend.
 */
final class TreeHead {
  private static final String BY_LINE =
      "Begin at 1, at the left. Do what the box says, and follow the line of your answer to the"
          + " right. Every caution that a box names stands above in short and below the tree in"
          + " full.";
  private static final double SIZE = 13;
  private static final double TITLE = 24;
  private static final double GAP = 14;
  private static final double WIDEST = 1200;

  private final double x;
  private final List<Line> above = new ArrayList<>();
  private final CautionBoxes cautions;
  private final List<Line> reading = new ArrayList<>();
  private final List<DrawnBox> legend;
  private final double readingTop;
  private final double bottom;

  /** A head that begins at the upper edge and goes from x to the right. */
  TreeHead(TreeCut cut, double x, double right) {
    this.x = x;
    CutPage front = TreeSheet.front(cut, BY_LINE);
    double room = Math.min(right - x, WIDEST);
    above.addAll(Line.wrap(front.title(), TITLE, true, room));
    above.addAll(Line.wrap(front.summary(), SIZE, false, room));
    above.addAll(Line.wrap(front.cutFor(), SIZE, false, room));
    double top = x + above.stream().mapToDouble(Line::height).sum() + GAP;
    cautions = new CautionBoxes(x, right);
    cautions.inFull(cut.cautions().stream().filter(WorkCaution::emergency).toList(), top);
    cautions.inShort(
        cut.cautions().stream().filter(caution -> !caution.emergency()).toList(),
        cautions.bottom());
    readingTop = cautions.bottom();
    for (Part part : front.parts()) {
      if (part.role() != Part.Role.CAUTIONS) {
        reading.add(new Line(part.title(), SIZE, true));
        texts(part).forEach(text -> reading.addAll(Line.wrap(text, SIZE, false, room)));
      }
    }
    double end = readingTop + reading.stream().mapToDouble(Line::height).sum() + GAP;
    legend = TreeDrawing.legend(cut, x, end, SIZE);
    bottom = end + legend.get(0).height() + 2 * GAP;
  }

  private static List<String> texts(Part part) {
    List<String> texts = new ArrayList<>();
    for (Block block : part.blocks()) {
      TextLines lines = new TextLines(Integer.MAX_VALUE);
      block.to(new BlockText(lines));
      lines.toString().lines().filter(line -> !line.isBlank()).forEach(texts::add);
    }
    return texts;
  }

  void draw(SvgPen pen) {
    TreeSvg out = new TreeSvg(pen);
    pen.lines(above, x, x);
    cautions.draw(out);
    pen.lines(reading, x, readingTop);
    legend.forEach(out::box);
  }

  /** The lower edge of the head. */
  double bottom() {
    return bottom;
  }

  /** The right edge of what is in it. */
  double right() {
    DrawnBox last = legend.get(legend.size() - 1);
    return Math.max(cautions.right(), last.x() + last.width());
  }
}
