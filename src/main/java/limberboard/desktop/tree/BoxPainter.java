package limberboard.desktop.tree;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import limberboard.desktop.look.Palette;
import limberboard.print.drawing.Outlines;
import limberboard.print.type.FontMeasure;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoMend;

/**
 * Paints forks. A check has round corners, a mend has its corners cut off, the yard has a double
 * edge; each says in a word what it is.
 */
final class BoxPainter {
  private static final String HERE = "You are here";
  private final Grid grid;
  private final FontMeasure fonts;

  /**
   * How a fork stands out.
   *
   * @param selected whether it is selected
   * @param focused whether it is selected and the keyboard works here
   * @param onTheWay whether the trace came through it
   * @param here whether the trace stands there
   */
  record State(boolean selected, boolean focused, boolean onTheWay, boolean here) {}

  BoxPainter(Grid grid, FontMeasure fonts) {
    this.grid = grid;
    this.fonts = fonts;
  }

  /** Everything that a box can cover. */
  Rectangle2D reach(Box box) {
    Rectangle2D all = new Rectangle2D.Double();
    all.setFrame(box.bounds());
    all.add(all.getX() - grid.small(), all.getY() - grid.flag());
    all.add(all.getMaxX() + grid.gap(), all.getMaxY() + grid.small());
    return all;
  }

  void paint(Graphics2D g, Box box, State state) {
    Shape shape = shape(box, 0);
    g.setColor((state.selected() ? Palette.CHOSEN : Palette.SHEET).color());
    g.fill(shape);
    boolean stands = state.onTheWay() || state.selected();
    g.setColor((stands ? Palette.ACCENT : Palette.QUIET).color());
    g.setStroke(new BasicStroke(state.focused() ? 3.6f : stands ? 2.4f : 1.3f));
    g.draw(shape);
    if (box.fork().step() instanceof CallYard) {
      g.setStroke(new BasicStroke(1.1f));
      g.draw(shape(box, grid.small()));
    }
    text(g, box);
    if (state.here()) {
      flag(g, box.bounds());
    }
    box.mark().ifPresent(mark -> mark(g, box, mark));
  }

  private Shape shape(Box box, double inside) {
    Rectangle2D all = box.bounds();
    double w = all.getWidth() - 2 * inside;
    double h = all.getHeight() - 2 * inside;
    double arc = box.fork().step() instanceof CallYard ? 0 : 1.5 * grid.padding();
    return box.fork().step() instanceof DoMend
        ? Outlines.mend(all, 1.2 * grid.padding())
        : new RoundRectangle2D.Double(all.getX() + inside, all.getY() + inside, w, h, arc, arc);
  }

  private void text(Graphics2D g, Box box) {
    float x = (float) (box.bounds().getX() + grid.padding());
    double y = box.bounds().getY() + grid.padding() + fonts.ascent();
    g.setFont(fonts.font(false));
    g.setColor(Palette.QUIET.color());
    g.drawString(ForkWords.kind(box.fork()), x, (float) y);
    g.setFont(fonts.font(true));
    g.setColor(Palette.INK.color());
    for (String line : box.lines()) {
      y += grid.line();
      g.drawString(line, x, (float) y);
    }
    g.setFont(fonts.font(false));
    g.setColor(Palette.QUIET.color());
    g.drawString(ForkWords.minutes(box.fork()), x, (float) (y + grid.line()));
  }

  /** A flag on top of the box that says where the trace stands. */
  private void flag(Graphics2D g, Rectangle2D box) {
    double pad = grid.padding();
    double x = box.getX();
    double low = box.getY();
    double top = low - grid.flag();
    double right = x + fonts.width(HERE, true) + 3 * pad;
    g.setColor(Palette.ACCENT.color());
    g.fill(
        Outlines.polygon(
            new double[] {x, x, right, right - pad, right},
            new double[] {low, top, top, (top + low) / 2, low}));
    g.setColor(Palette.ON_ACCENT.color());
    g.setFont(fonts.font(true));
    double y = top + (grid.flag() - grid.line()) / 2 + fonts.ascent();
    g.drawString(HERE, (float) (x + pad), (float) y);
  }

  /** A minus where something can be folded away, a plus where something is. */
  private void mark(Graphics2D g, Box box, Ellipse2D mark) {
    g.setColor(Palette.SHEET.color());
    g.fill(mark);
    g.setColor(Palette.INK.color());
    g.setStroke(new BasicStroke(1.4f));
    g.draw(mark);
    double arm = mark.getWidth() / 4;
    double x = mark.getCenterX();
    double y = mark.getCenterY();
    g.draw(new Line2D.Double(x - arm, y, x + arm, y));
    if (!box.open()) {
      g.draw(new Line2D.Double(x, y - arm, x, y + arm));
    }
    if (!box.more().isEmpty()) {
      g.setFont(fonts.font(false));
      g.setColor(Palette.QUIET.color());
      float after = (float) (mark.getMaxX() + grid.small());
      g.drawString(box.more(), after, (float) (y - grid.line() / 2 + fonts.ascent()));
    }
  }
}
