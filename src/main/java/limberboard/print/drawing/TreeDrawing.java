package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.drawing.DrawnBox.Shape;
import limberboard.trace.DiagnosticTree;

/**
 * Draws diagnostic trees as SVG: one file that needs nothing else, in the colours of the library's
 * drawings on white. Every kind of step has a form of its own and says in words what it is.
 * Stateless.
 */
public final class TreeDrawing {
  /** The widest a drawing is on a sheet, in CSS pixels of 1/96 inch. */
  public static final double PAPER_WIDTH = 640;

  /** The highest a drawing is on a sheet, in CSS pixels of 1/96 inch. */
  public static final double PAPER_HEIGHT = 880;

  private static final String BY_LINE =
      "Begin at 1, at the left. Do what the box says, and follow the line of your answer to the"
          + " right.";
  private static final int PAPER_LEVELS = 3;
  private static final double EDGE = 24;

  /** The whole tree, with its cautions and how to read it above. */
  public String whole(DiagnosticTree tree) {
    SheetTreeLayout measured =
        new SheetTreeLayout(tree, TreeStyle.WHOLE, TreeSheet::facts, EDGE, 0);
    TreeHead head =
        new TreeHead(new TreeSheet().front(tree, BY_LINE), EDGE, Math.max(measured.right(), 900));
    SheetTreeLayout placed =
        new SheetTreeLayout(tree, TreeStyle.WHOLE, TreeSheet::facts, EDGE, head.bottom());
    SvgPen pen =
        new SvgPen(
            tree.from().fault().page().title(),
            Math.max(placed.right(), head.right()) + EDGE,
            head.bottom() + placed.height() + EDGE);
    head.draw(pen);
    return drawn(placed, pen);
  }

  /**
   * The first steps, as many levels as fit across and down a sheet, at the size at which the
   * letters are 9 points. Cautions stand on the sheet itself.
   */
  String beginning(DiagnosticTree tree) {
    int levels = PAPER_LEVELS;
    SheetTreeLayout placed =
        new SheetTreeLayout(tree, TreeStyle.paper(levels), TreeWords::facts, 1, 1);
    while (levels > 1 && placed.height() > PAPER_HEIGHT) {
      levels--;
      placed = new SheetTreeLayout(tree, TreeStyle.paper(levels), TreeWords::facts, 1, 1);
    }
    return drawn(
        placed,
        new SvgPen(tree.from().fault().page().title(), placed.right() + 1, placed.height() + 2));
  }

  private static String drawn(SheetTreeLayout placed, SvgPen pen) {
    TreeSvg out = new TreeSvg(pen);
    placed.edges().forEach(out::edge);
    placed.boxes().forEach(out::box);
    return pen.finish();
  }

  /** What the forms mean. */
  static List<DrawnBox> legend(double x, double y, double size) {
    List<DrawnBox> boxes = new ArrayList<>();
    double at = x;
    for (Meaning meaning : MEANINGS) {
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
          new Meaning(Shape.SELDOM, "Seldom: ask the program"));
}
