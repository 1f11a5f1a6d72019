package limberboard.desktop.drawing;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Zone;
import limberboard.library.page.Outline;

/** The outlines of one view of a model, in the drawing's own coordinates. Immutable. */
public final class ZoneMap {
  private final Map<String, Path2D> outlines;
  private final List<String> smallestFirst;

  private ZoneMap(Map<String, Path2D> outlines) {
    this.outlines = outlines;
    List<String> ids = new ArrayList<>(outlines.keySet());
    ids.sort(Comparator.comparingDouble(id -> size(outlines.get(id))));
    this.smallestFirst = List.copyOf(ids);
  }

  /** The zones that can be seen from the side. */
  public static ZoneMap profile(Model model) {
    return of(model, Zone::profile);
  }

  /** The zones that can be seen from above. */
  public static ZoneMap deck(Model model) {
    return of(model, Zone::deck);
  }

  private static ZoneMap of(Model model, Function<Zone, Optional<Outline>> view) {
    Map<String, Path2D> outlines = new LinkedHashMap<>();
    for (Zone zone : model.drawnZones()) {
      view.apply(zone).ifPresent(outline -> outlines.put(zone.id(), path(outline)));
    }
    return new ZoneMap(outlines);
  }

  private static Path2D path(Outline outline) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    for (Outline.Point point : outline.points()) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(point.x(), point.y());
      } else {
        path.lineTo(point.x(), point.y());
      }
    }
    path.closePath();
    return path;
  }

  private static double size(Shape shape) {
    Rectangle2D box = shape.getBounds2D();
    return box.getWidth() * box.getHeight();
  }

  /** Ids of the zones in this view. */
  public List<String> ids() {
    return List.copyOf(outlines.keySet());
  }

  /** The zone at a point: the smallest, where several overlap. */
  public Optional<String> at(double x, double y) {
    return smallestFirst.stream().filter(id -> outlines.get(id).contains(x, y)).findFirst();
  }

  /** The outline of a zone, if this view shows it. */
  public Optional<Shape> outline(String id) {
    return Optional.ofNullable(outlines.get(id)).map(path -> (Shape) path.clone());
  }

  /** A point inside a zone, for its name: its middle, or where it is widest if that is outside. */
  public Optional<Point2D> middle(String id) {
    return Optional.ofNullable(outlines.get(id)).map(ZoneMap::inside);
  }

  private static Point2D inside(Path2D path) {
    Rectangle2D box = path.getBounds2D();
    if (path.contains(box.getCenterX(), box.getCenterY())) {
      return new Point2D.Double(box.getCenterX(), box.getCenterY());
    }
    Point2D best = new Point2D.Double(box.getCenterX(), box.getCenterY());
    double widest = -1;
    Area area = new Area(path);
    for (int step = 1; step < 10; step++) {
      Area slice = new Area(area);
      double y = box.getY() + box.getHeight() * step / 10;
      slice.intersect(new Area(new Rectangle2D.Double(box.getX(), y - 1, box.getWidth(), 2)));
      if (slice.getBounds2D().getWidth() > widest && slice.isSingular()) {
        widest = slice.getBounds2D().getWidth();
        best = new Point2D.Double(slice.getBounds2D().getCenterX(), y);
      }
    }
    return best;
  }

  /**
   * The nearest other zone in a direction.
   *
   * @param from the zone to start from
   * @param dx -1 to the left, 1 to the right, 0 for up and down
   * @param dy -1 up, 1 down, 0 for left and right
   */
  public Optional<String> towards(String from, int dx, int dy) {
    Optional<Point2D> start = middle(from);
    if (start.isEmpty()) {
      return outlines.keySet().stream().findFirst();
    }
    String best = null;
    double least = Double.MAX_VALUE;
    for (String id : outlines.keySet()) {
      Point2D there = inside(outlines.get(id));
      double along = (there.getX() - start.get().getX()) * dx;
      along += (there.getY() - start.get().getY()) * dy;
      double across = Math.abs((there.getX() - start.get().getX()) * dy);
      across += Math.abs((there.getY() - start.get().getY()) * dx);
      double cost = along + 2 * across;
      if (!id.equals(from) && along > 0 && across <= 3 * along && cost < least) {
        least = cost;
        best = id;
      }
    }
    return Optional.ofNullable(best);
  }
}
