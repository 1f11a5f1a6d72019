package limberboard.library.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed polygon in a drawing's own coordinates, written {@code "x,y x,y x,y"}.
 *
 * @param points at least three corners
 */
public record Outline(List<Point> points) {
  private static final int LEAST_CORNERS = 3;

  /** Copies the points. */
  public Outline {
    points = List.copyOf(points);
  }

  /**
   * A corner.
   *
   * @param x to the right
   * @param y downwards
   */
  public record Point(double x, double y) {}

  /**
   * Reads an outline.
   *
   * @throws IllegalArgumentException when it is not at least three pairs of numbers
   */
  public static Outline parse(String text) {
    List<Point> points = new ArrayList<>();
    for (String pair : text.strip().split("\\s+")) {
      String[] parts = pair.split(",", -1);
      try {
        if (parts.length != 2) {
          throw new NumberFormatException(pair);
        }
        points.add(new Point(Double.parseDouble(parts[0]), Double.parseDouble(parts[1])));
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            "an outline is written \"x,y x,y x,y\", and \"" + pair + "\" is no pair of numbers", e);
      }
    }
    if (points.size() < LEAST_CORNERS) {
      throw new IllegalArgumentException("an outline has at least three corners");
    }
    return new Outline(points);
  }
}
