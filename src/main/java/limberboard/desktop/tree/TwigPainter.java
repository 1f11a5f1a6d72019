package limberboard.desktop.tree;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import limberboard.desktop.look.Palette;
import limberboard.print.type.FontMeasure;
import limberboard.trace.DiagnosticTree.End;
import limberboard.words.PerCent;

/** Paints branches: a line, the answer above it, its chance below it, and how it ends. */
final class TwigPainter {
  private static final float USUAL = 1.3f;
  private static final float ON_THE_WAY = 3.4f;
  private static final float DASH = 4f;
  private final Grid grid;
  private final FontMeasure fonts;

  TwigPainter(Grid grid, FontMeasure fonts) {
    this.grid = grid;
    this.fonts = fonts;
  }

  void paint(Graphics2D g, Twig twig, boolean onTheWay) {
    g.setColor((onTheWay ? Palette.ACCENT : Palette.QUIET).color());
    g.setStroke(
        new BasicStroke(
            onTheWay ? ON_THE_WAY : USUAL, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    g.draw(line(twig));
    double x = twig.trunk() + grid.small();
    double y = twig.to().getY() - grid.small() - (twig.label().size() - 1) * grid.line();
    y -= grid.line() - fonts.ascent();
    g.setFont(fonts.font(true));
    g.setColor(Palette.INK.color());
    for (String words : twig.label()) {
      g.drawString(words, (float) x, (float) y);
      y += grid.line();
    }
    g.setFont(fonts.font(false));
    g.setColor(Palette.QUIET.color());
    String chance = PerCent.words(twig.branch().chance());
    g.drawString(chance, (float) x, (float) (twig.to().getY() + grid.small() + fonts.ascent()));
    twig.tag().ifPresent(tag -> tag(g, twig, tag));
  }

  private Path2D line(Twig twig) {
    double bend = Math.abs(twig.to().getY() - twig.from().getY());
    double round = Math.min(grid.padding(), bend / 2);
    double down = Math.signum(twig.to().getY() - twig.from().getY());
    Path2D line = new Path2D.Double();
    line.moveTo(twig.from().getX(), twig.from().getY());
    line.lineTo(twig.trunk() - round, twig.from().getY());
    line.quadTo(twig.trunk(), twig.from().getY(), twig.trunk(), twig.from().getY() + down * round);
    line.lineTo(twig.trunk(), twig.to().getY() - down * round);
    line.quadTo(twig.trunk(), twig.to().getY(), twig.trunk() + round, twig.to().getY());
    line.lineTo(twig.to().getX(), twig.to().getY());
    return line;
  }

  /** What is mended has a solid edge, what is too seldom to be drawn a dashed one. */
  private void tag(Graphics2D g, Twig twig, Rectangle2D tag) {
    boolean mended = twig.branch().end() == End.MENDED;
    double arc = mended ? tag.getHeight() : 0;
    RoundRectangle2D shape =
        new RoundRectangle2D.Double(
            tag.getX(), tag.getY(), tag.getWidth(), tag.getHeight(), arc, arc);
    g.setColor((mended ? Palette.SHEET : Palette.PAPER).color());
    g.fill(shape);
    g.setColor(Palette.QUIET.color());
    g.setStroke(
        mended
            ? new BasicStroke(USUAL)
            : new BasicStroke(
                USUAL, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {DASH}, 0));
    g.draw(shape);
    g.setFont(fonts.font(true));
    g.setColor((mended ? Palette.INK : Palette.QUIET).color());
    double middle = tag.getCenterY() - grid.line() / 2 + fonts.ascent();
    g.drawString(
        ForkWords.end(twig.branch()), (float) (tag.getX() + grid.padding()), (float) middle);
  }
}
