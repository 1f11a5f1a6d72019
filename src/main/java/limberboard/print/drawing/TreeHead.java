package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.drawing.DrawnBox.Shape;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.BlockText;
import limberboard.print.text.TextLines;

/** What stands above a drawn tree: title, boat, cautions, how to read it, legend. */
final class TreeHead {
  private static final double SIZE = 13;
  private static final double TITLE = 24;
  private static final double CAUTION_WIDTH = 430;
  private static final double GAP = 14;
  private static final int MOST_COLUMNS = 4;

  private final double x;
  private final List<Line> above = new ArrayList<>();
  private final List<DrawnBox> cautions = new ArrayList<>();
  private final List<Line> reading = new ArrayList<>();
  private final List<DrawnBox> legend;
  private final double readingTop;
  private final double bottom;

  /** A head that begins at the upper edge and goes from x to the right. */
  TreeHead(CutPage front, double x, double right) {
    this.x = x;
    double room = right - x;
    above.addAll(Line.wrap(front.title(), TITLE, true, Math.min(room, 1200)));
    above.addAll(Line.wrap(front.summary(), SIZE, false, room));
    above.addAll(Line.wrap(front.cutFor(), SIZE, false, room));
    double top = x + above.stream().mapToDouble(Line::height).sum() + GAP;
    readingTop = cautions(front.cautions(), top, room);
    for (Part part : front.parts()) {
      if (part.role() != Part.Role.CAUTIONS) {
        reading.add(new Line(part.title(), SIZE, true));
        texts(part).forEach(text -> reading.addAll(Line.wrap(text, SIZE, false, room)));
      }
    }
    double end = readingTop + reading.stream().mapToDouble(Line::height).sum() + GAP;
    legend = TreeDrawing.legend(x, end, SIZE);
    bottom = end + legend.get(0).height() + 2 * GAP;
  }

  /** Places the cautions in rows and says where they end. */
  private double cautions(List<Block.CautionBox> all, double top, double room) {
    int columns = Math.max(1, (int) Math.min(MOST_COLUMNS, (room + GAP) / (CAUTION_WIDTH + GAP)));
    double y = top;
    for (int i = 0; i < all.size(); i += columns) {
      double highest = 0;
      for (int column = 0; column < columns && i + column < all.size(); column++) {
        List<Line> lines = lines(all.get(i + column));
        DrawnBox box =
            new DrawnBox(
                Shape.CAUTION,
                x + column * (CAUTION_WIDTH + GAP),
                y,
                CAUTION_WIDTH,
                DrawnBox.height(lines),
                lines);
        cautions.add(box);
        highest = Math.max(highest, box.height());
      }
      y += highest + GAP;
    }
    return y;
  }

  private static List<Line> lines(Block.CautionBox caution) {
    double room = DrawnBox.room(CAUTION_WIDTH);
    String because = caution.because().isEmpty() ? "" : " (" + caution.because() + ")";
    List<Line> lines = new ArrayList<>();
    lines.addAll(Line.wrap("Caution: " + caution.title() + because, SIZE, true, room));
    lines.addAll(Line.wrap(caution.danger(), SIZE, true, room));
    caution.act().forEach(act -> lines.addAll(Line.wrap("– " + act, SIZE, false, room)));
    if (!caution.seek().isEmpty()) {
      lines.addAll(Line.wrap(caution.seek(), SIZE, false, room));
    }
    return lines;
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
    cautions.forEach(out::box);
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
    return last.x() + last.width();
  }
}
