package limberboard.desktop.look;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.Icon;
import javax.swing.UIManager;

/**
 * A small drawing in lines of the component's own colour, sharp at every scale. Our own drawings.
 */
public final class LineIcon implements Icon {
  private static final int GRID = 24;
  private final List<Shape> lines;
  private final int side;

  private LineIcon(int side, Shape... lines) {
    this.lines = List.of(lines);
    this.side = side;
  }

  /** A drop of water below a plank with a ring in it: tracing a leak. */
  public static LineIcon trace(int side) {
    Path2D drop = path(12, 9);
    drop.curveTo(12, 9, 17.5, 14.5, 17.5, 17.2);
    drop.curveTo(17.5, 20.3, 15, 22.4, 12, 22.4);
    drop.curveTo(9, 22.4, 6.5, 20.3, 6.5, 17.2);
    drop.curveTo(6.5, 14.5, 12, 9, 12, 9);
    return new LineIcon(
        side, new Rectangle2D.Double(2, 2, 20, 4), new Ellipse2D.Double(11, 3, 2, 2), drop);
  }

  /** Two leaves of a book. */
  public static LineIcon pages(int side) {
    Path2D left = path(12, 5.5);
    left.curveTo(9, 3.5, 5.5, 3.5, 2.5, 4.5);
    left.lineTo(2.5, 19.5);
    left.curveTo(5.5, 18.5, 9, 18.5, 12, 20.5);
    left.closePath();
    Path2D right = path(12, 5.5);
    right.curveTo(15, 3.5, 18.5, 3.5, 21.5, 4.5);
    right.lineTo(21.5, 19.5);
    right.curveTo(18.5, 18.5, 15, 18.5, 12, 20.5);
    return new LineIcon(side, left, right);
  }

  /** A bar of seasons with today pinned on it, and the work below it. */
  public static LineIcon upkeep(int side) {
    Path2D seasons = path(8.5, 9.5);
    seasons.lineTo(8.5, 15);
    seasons.moveTo(15.5, 9.5);
    seasons.lineTo(15.5, 15);
    Path2D today = path(12, 6.5);
    today.lineTo(12, 15);
    Path2D work = path(4.5, 18.5);
    work.lineTo(7.5, 18.5);
    work.moveTo(10.5, 18.5);
    work.lineTo(18.5, 18.5);
    work.moveTo(6.5, 21.5);
    work.lineTo(12.5, 21.5);
    return new LineIcon(
        side,
        new Rectangle2D.Double(2, 9.5, 20, 5.5),
        new Ellipse2D.Double(10, 2.5, 4, 4),
        seasons,
        today,
        work);
  }

  /** An envelope. */
  public static LineIcon letters(int side) {
    Path2D flap = path(2.5, 6.5);
    flap.lineTo(12, 13.5);
    flap.lineTo(21.5, 6.5);
    return new LineIcon(side, new Rectangle2D.Double(2.5, 5, 19, 14.5), flap);
  }

  /** A ring that is looked for under a lens. */
  public static LineIcon drills(int side) {
    Path2D handle = path(15.5, 15.5);
    handle.lineTo(21.5, 21.5);
    Path2D question = path(7.8, 8.4);
    question.curveTo(7.8, 5.4, 12.4, 5.4, 12.4, 8.4);
    question.curveTo(12.4, 10.2, 10.1, 10.2, 10.1, 12);
    return new LineIcon(
        side,
        new Ellipse2D.Double(2.5, 2.5, 15.2, 15.2),
        handle,
        question,
        new Ellipse2D.Double(9.8, 14, 0.6, 0.6));
  }

  /** A hull with two sails. */
  public static LineIcon boats(int side) {
    Path2D hull = path(2.5, 17);
    hull.lineTo(21.5, 17);
    hull.curveTo(20, 20.5, 18, 21.5, 15, 21.5);
    hull.lineTo(8, 21.5);
    hull.curveTo(5, 21.5, 3.5, 19.5, 2.5, 17);
    hull.closePath();
    Path2D main = path(12.5, 2.5);
    main.curveTo(15.5, 6, 17.8, 10, 18.5, 14);
    main.lineTo(12.5, 14);
    main.closePath();
    Path2D jib = path(10, 5);
    jib.curveTo(8.5, 9, 6.5, 12, 4.5, 14);
    jib.lineTo(10, 14);
    jib.closePath();
    return new LineIcon(side, hull, main, jib);
  }

  /** A pencil on a line. */
  public static LineIcon write(int side) {
    Path2D pencil = path(4, 20);
    pencil.lineTo(5.2, 15.2);
    pencil.lineTo(16.5, 3.9);
    pencil.lineTo(20.1, 7.5);
    pencil.lineTo(8.8, 18.8);
    pencil.closePath();
    Path2D rest = path(13.9, 6.5);
    rest.lineTo(17.5, 10.1);
    rest.moveTo(12.5, 21);
    rest.lineTo(20.5, 21);
    return new LineIcon(side, pencil, rest);
  }

  /** A box of cards with a line for each of them on its front. */
  public static LineIcon workspace(int side) {
    Path2D cards = path(5, 9.5);
    cards.lineTo(5, 5.5);
    cards.lineTo(19, 5.5);
    cards.lineTo(19, 9.5);
    cards.moveTo(7.5, 5.5);
    cards.lineTo(7.5, 2.5);
    cards.lineTo(16.5, 2.5);
    cards.lineTo(16.5, 5.5);
    Path2D lines = path(7.5, 14);
    lines.lineTo(16.5, 14);
    lines.moveTo(7.5, 17.5);
    lines.lineTo(13, 17.5);
    return new LineIcon(side, new Rectangle2D.Double(2.5, 9.5, 19, 12), cards, lines);
  }

  /** A ring with a question in it. */
  public static LineIcon help(int side) {
    Path2D question = path(9, 9.4);
    question.curveTo(9, 5.6, 15, 5.6, 15, 9.4);
    question.curveTo(15, 11.8, 12, 11.6, 12, 14.2);
    return new LineIcon(
        side,
        new Ellipse2D.Double(2.5, 2.5, 19, 19),
        question,
        new Ellipse2D.Double(11.6, 16.8, 0.8, 0.8));
  }

  /** A lens. */
  public static LineIcon search(int side) {
    Path2D handle = path(15.5, 15.5);
    handle.lineTo(21, 21);
    return new LineIcon(side, new Ellipse2D.Double(4, 4, 13, 13), handle);
  }

  /** A triangle with a stroke in it: a danger. */
  public static LineIcon caution(int side) {
    Path2D edge = path(12, 3);
    edge.lineTo(22, 20.5);
    edge.lineTo(2, 20.5);
    edge.closePath();
    Path2D stroke = path(12, 9.5);
    stroke.lineTo(12, 14.5);
    return new LineIcon(side, edge, stroke, new Ellipse2D.Double(11.6, 17, 0.8, 0.8));
  }

  /** An angle that opens upwards: a list comes out below. */
  public static LineIcon below(int side) {
    Path2D angle = path(5, 9);
    angle.lineTo(12, 16);
    angle.lineTo(19, 9);
    return new LineIcon(side, angle);
  }

  /** An arrow to the left. */
  public static LineIcon back(int side) {
    Path2D arrow = path(11, 5);
    arrow.lineTo(4, 12);
    arrow.lineTo(11, 19);
    Path2D shaft = path(4, 12);
    shaft.lineTo(20, 12);
    return new LineIcon(side, arrow, shaft);
  }

  /** An arrow to the right. */
  public static LineIcon forward(int side) {
    Path2D arrow = path(13, 5);
    arrow.lineTo(20, 12);
    arrow.lineTo(13, 19);
    Path2D shaft = path(20, 12);
    shaft.lineTo(4, 12);
    return new LineIcon(side, arrow, shaft);
  }

  private static Path2D path(double x, double y) {
    Path2D path = new Path2D.Double();
    path.moveTo(x, y);
    return path;
  }

  @Override
  public void paintIcon(Component c, Graphics g, int x, int y) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g2.translate(x, y);
    double scale = getIconWidth() / (double) GRID;
    g2.scale(scale, scale);
    g2.setColor(ink(c));
    g2.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    lines.forEach(g2::draw);
    g2.dispose();
  }

  /** What cannot be pressed is pale, as its text would be. */
  private static Color ink(Component c) {
    if (c == null) {
      return Palette.INK.color();
    }
    Color pale = UIManager.getColor("Button.disabledText");
    return c.isEnabled() || pale == null ? c.getForeground() : pale;
  }

  @Override
  public int getIconWidth() {
    return UIScale.scale(side);
  }

  @Override
  public int getIconHeight() {
    return UIScale.scale(side);
  }
}
