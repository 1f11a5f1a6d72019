package limberboard.desktop.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * The program's own sign, at the sizes that systems ask for: a limber board, lifted at one end over
 * the water in the bilge. Our own drawing; its colours are the same in both themes.
 */
public final class AppIcon {
  private static final List<Integer> SIDES = List.of(16, 20, 24, 32, 48, 64, 128, 256);
  private static final int GRID = 64;
  private static final int SMALL = 24;
  private static final Color GROUND = new Color(0x16324f);
  private static final Color BOARD = new Color(0xf4efe4);
  private static final Color WATER = new Color(0x4fb8a3);

  private AppIcon() {}

  /** The sign in all sizes, the smallest first. */
  public static List<Image> images() {
    return SIDES.stream().<Image>map(AppIcon::image).toList();
  }

  /** The sign, so many pixels wide and high. */
  static BufferedImage image(int side) {
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(side / (double) GRID, side / (double) GRID);
    g.setColor(GROUND);
    g.fill(new RoundRectangle2D.Double(0, 0, GRID, GRID, 14, 14));
    water(g, side <= SMALL ? 7 : 5);
    board(g, side > SMALL);
    g.dispose();
    return image;
  }

  private static void water(Graphics2D g, float width) {
    Path2D line = new Path2D.Double();
    line.moveTo(7, 50);
    line.curveTo(13, 44, 19, 44, 25, 50);
    line.curveTo(31, 56, 37, 56, 43, 50);
    line.curveTo(48, 45, 52, 45, 57, 49);
    g.setColor(WATER);
    g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(line);
  }

  private static void board(Graphics2D g, boolean fingerHole) {
    Graphics2D lifted = (Graphics2D) g.create();
    lifted.rotate(Math.toRadians(-24), 8, 38);
    lifted.setColor(BOARD);
    lifted.fill(new RoundRectangle2D.Double(8, 28, 50, 10, 3, 3));
    if (fingerHole) {
      lifted.setColor(GROUND);
      lifted.fill(new Ellipse2D.Double(45, 30.5, 5, 5));
    }
    lifted.dispose();
  }
}
