package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import limberboard.boat.WorkCaution;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.drawing.DrawnBox.Shape;

/** Boxes of cautions in rows, from an edge to the right. For one drawing, on one thread. */
final class CautionBoxes {
  private static final double SIZE = 13;
  private static final double WIDTH = 430;
  private static final double GAP = 14;
  private static final int MOST_COLUMNS = 4;

  private final double x;
  private final int columns;
  private final List<DrawnBox> boxes = new ArrayList<>();
  private double bottom;

  /** No boxes yet, in as many columns as have room between two edges. */
  CautionBoxes(double x, double right) {
    this.x = x;
    this.columns = Math.max(1, (int) Math.min(MOST_COLUMNS, (right - x + GAP) / (WIDTH + GAP)));
  }

  /** Adds cautions with their whole text below this height. */
  void inFull(List<WorkCaution> cautions, double top) {
    place(cautions, CautionBoxes::full, top);
  }

  /** Adds cautions by name, danger and rule below this height. */
  void inShort(List<WorkCaution> cautions, double top) {
    place(cautions, CautionBoxes::shortly, top);
  }

  private void place(List<WorkCaution> all, Function<WorkCaution, List<Line>> words, double top) {
    bottom = top;
    for (int i = 0; i < all.size(); i += columns) {
      double highest = 0;
      for (int column = 0; column < columns && i + column < all.size(); column++) {
        List<Line> lines = words.apply(all.get(i + column));
        double left = x + column * (WIDTH + GAP);
        double high = DrawnBox.height(lines);
        boxes.add(new DrawnBox(Shape.CAUTION, left, bottom, WIDTH, high, lines));
        highest = Math.max(highest, high);
      }
      bottom += highest + GAP;
    }
  }

  private static List<Line> full(WorkCaution caution) {
    List<String> texts = CardWords.inFull(caution);
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      lines.addAll(Line.wrap(texts.get(i), SIZE, i < 2, DrawnBox.room(WIDTH)));
    }
    return lines;
  }

  private static List<Line> shortly(WorkCaution caution) {
    List<Line> lines = new ArrayList<>();
    lines.addAll(Line.wrap("Caution: " + caution.title(), SIZE, true, DrawnBox.room(WIDTH)));
    lines.addAll(Line.wrap(CardWords.inShort(caution), SIZE, false, DrawnBox.room(WIDTH)));
    return lines;
  }

  void draw(TreeSvg out) {
    boxes.forEach(out::box);
  }

  /** The lower edge, with the room below it. */
  double bottom() {
    return bottom;
  }

  /** The right edge of the last of them, or where they would begin. */
  double right() {
    return boxes.stream().mapToDouble(box -> box.x() + box.width()).max().orElse(x);
  }
}
