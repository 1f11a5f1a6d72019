package limberboard.print.drawing;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Shapes with straight edges, the same on screen and on paper. Stateless. */
public final class Outlines {
  private Outlines() {}

  /** A closed shape with corners at these places across and down. */
  public static Shape polygon(double[] x, double[] y) {
    Path2D path = new Path2D.Double();
    path.moveTo(x[0], y[0]);
    for (int i = 1; i < x.length; i++) {
      path.lineTo(x[i], y[i]);
    }
    path.closePath();
    return path;
  }

  /** What a mend is drawn as: a box with its corners cut off by so much each way. */
  public static Shape mend(Rectangle2D box, double cut) {
    double left = box.getX();
    double top = box.getY();
    double right = box.getMaxX();
    double low = box.getMaxY();
    return polygon(
        new double[] {left + cut, right - cut, right, right, right - cut, left + cut, left, left},
        new double[] {top, top, top + cut, low - cut, low, low, low - cut, top + cut});
  }
}
