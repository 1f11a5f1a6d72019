package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.drawing.DrawnBox.Shape;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.TreeCut;

/**
 * Draws diagnostic trees, whole or cut, as SVG: one file that needs nothing else, in the colours of
 * the library's drawings on white. Every kind of step has a form of its own and says in words what
 * it is. Stateless.
 */
public final class TreeDrawing {
  /** The widest a drawing is on a sheet, in CSS pixels of 1/96 inch. */
  public static final double PAPER_WIDTH = 640;

  /** The highest a drawing is on a sheet, in CSS pixels of 1/96 inch. */
  public static final double PAPER_HEIGHT = 880;

  private static final int PAPER_LEVELS = 3;
  private static final double EDGE = 24;
  private static final double LEAST_WIDTH = 900;

  /** The whole tree, its cautions in two lines and how to read it above, in full below. */
  public String whole(DiagnosticTree tree) {
    return of(TreeCut.all(tree));
  }

  /** The same of a tree cut down. */
  public String of(TreeCut cut) {
    SheetTreeLayout measured = new SheetTreeLayout(cut, TreeStyle.WHOLE, TreeSheet::facts, EDGE, 0);
    double room = Math.max(measured.right(), LEAST_WIDTH);
    TreeHead head = new TreeHead(cut, EDGE, room);
    SheetTreeLayout placed =
        new SheetTreeLayout(cut, TreeStyle.WHOLE, TreeSheet::facts, EDGE, head.bottom());
    TreeFoot foot = new TreeFoot(cut, EDGE, room, head.bottom() + placed.height() + EDGE);
    SvgPen pen =
        new SvgPen(
            cut.tree().from().fault().page().title(),
            Math.max(placed.right(), head.right()) + EDGE,
            foot.bottom());
    head.draw(pen);
    draw(placed, pen);
    foot.draw(pen);
    return pen.finish();
  }

  /**
   * The first steps, as many levels as fit across and down a sheet, at the size at which the
   * letters are 9 points. Cautions stand on the sheet itself.
   */
  String beginning(TreeCut cut) {
    int levels = PAPER_LEVELS;
    SheetTreeLayout placed =
        new SheetTreeLayout(cut, TreeStyle.paper(levels), TreeWords::facts, 1, 1);
    while (levels > 1 && placed.height() > PAPER_HEIGHT) {
      levels--;
      placed = new SheetTreeLayout(cut, TreeStyle.paper(levels), TreeWords::facts, 1, 1);
    }
    SvgPen pen =
        new SvgPen(
            cut.tree().from().fault().page().title(), placed.right() + 1, placed.height() + 2);
    draw(placed, pen);
    return pen.finish();
  }

  private static void draw(SheetTreeLayout placed, SvgPen pen) {
    TreeSvg out = new TreeSvg(pen);
    placed.edges().forEach(out::edge);
    placed.boxes().forEach(out::box);
  }

  /** What the forms mean. */
  static List<DrawnBox> legend(TreeCut cut, double x, double y, double size) {
    List<DrawnBox> boxes = new ArrayList<>();
    double at = x;
    for (Meaning meaning : MEANINGS) {
      if (meaning.shape() == Shape.ELSEWHERE && cut.isWhole()) {
        continue;
      }
      List<Line> lines = List.of(new Line(meaning.words(), size, false));
      double width = lines.get(0).width() + 2 * DrawnBox.PADDING;
      boxes.add(new DrawnBox(meaning.shape(), at, y, width, DrawnBox.height(lines), lines));
      at += width + DrawnBox.PADDING;
    }
    return boxes;
  }

  private record Meaning(Shape shape, String words) {}

  private static final List<Meaning> MEANINGS =
      List.of(
          new Meaning(Shape.CHECK, "Check: look, ask or try"),
          new Meaning(Shape.MEND, "Mend you may do"),
          new Meaning(Shape.YARD, "Hand over to the yard"),
          new Meaning(Shape.MENDED, "Mended: the end"),
          new Meaning(Shape.SELDOM, "Seldom: ask the program"),
          new Meaning(Shape.ELSEWHERE, "Goes on in the whole tree"));
}
