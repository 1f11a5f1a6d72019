package limberboard.desktop.tree;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import limberboard.desktop.look.Palette;
import limberboard.print.type.FontMeasure;
import limberboard.trace.DiagnosticTree.Fork;

/** Paints the part of a tree that is in sight. */
final class TreePainter {
  private final TreeLayout layout;
  private final TreeWalk walk;
  private final TwigPainter twigs;
  private final BoxPainter boxes;
  private int painted;

  TreePainter(TreeLayout layout, TreeWalk walk, FontMeasure fonts) {
    this.layout = layout;
    this.walk = walk;
    this.twigs = new TwigPainter(layout.grid(), fonts);
    this.boxes = new BoxPainter(layout.grid(), fonts);
  }

  /**
   * Paints.
   *
   * @param g scaled to the zoom
   * @param inSight the part to be painted
   * @param focused whether the keyboard works here
   */
  void paint(Graphics2D g, Rectangle2D inSight, boolean focused) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Palette.PAPER.color());
    g.fill(inSight);
    painted = 0;
    for (boolean onTheWay : new boolean[] {false, true}) {
      for (Twig twig : layout.twigs()) {
        if (isOnTheWay(twig) == onTheWay && twig.bounds(layout.grid().line()).intersects(inSight)) {
          twigs.paint(g, twig, onTheWay);
        }
      }
    }
    for (Box box : layout.boxes()) {
      if (boxes.reach(box).intersects(inSight)) {
        painted++;
        boxes.paint(g, box, state(box.fork(), focused));
      }
    }
  }

  /** How many boxes the last painting touched. */
  int painted() {
    return painted;
  }

  private boolean isOnTheWay(Twig twig) {
    return twig.branch().then().map(walk::isOnTheWay).orElse(false);
  }

  private BoxPainter.State state(Fork fork, boolean focused) {
    boolean selected = walk.selected().number() == fork.number();
    boolean here = walk.isHere(fork);
    return new BoxPainter.State(selected, selected && focused, walk.isOnTheWay(fork), here);
  }
}
