package limberboard.desktop.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * A drawing fitted into a rectangle, with the way from the rectangle's points to the drawing's own
 * and back.
 *
 * @param box the drawing's own coordinates
 * @param room the rectangle it is fitted into, in the middle
 */
record DrawingFrame(Rectangle2D box, Rectangle2D room) {

  static DrawingFrame fit(Rectangle2D box, double width, double height) {
    double scale = Math.min(width / box.getWidth(), height / box.getHeight());
    double w = box.getWidth() * scale;
    double h = box.getHeight() * scale;
    return new DrawingFrame(box, new Rectangle2D.Double((width - w) / 2, (height - h) / 2, w, h));
  }

  double scale() {
    return room.getWidth() / box.getWidth();
  }

  /** From the drawing's coordinates to the component's. */
  AffineTransform toComponent() {
    AffineTransform way = AffineTransform.getTranslateInstance(room.getX(), room.getY());
    way.scale(scale(), scale());
    way.translate(-box.getX(), -box.getY());
    return way;
  }

  /** A point of the component in the drawing's coordinates. */
  Point2D toDrawing(Point2D point) {
    return new Point2D.Double(
        (point.getX() - room.getX()) / scale() + box.getX(),
        (point.getY() - room.getY()) / scale() + box.getY());
  }
}
