package limberboard.print.picture;

/**
 * How large a picture is shown, in CSS pixels of 1/96 inch.
 *
 * @param width at least 1
 * @param height at least 1
 */
public record PictureSize(int width, int height) {
  private static final double WIDEST = 600;
  private static final double HIGHEST = 560;

  /** Its own size, or smaller where that would not fit between the margins of a page. */
  public static PictureSize onPage(Picture picture) {
    return within(picture, WIDEST, HIGHEST);
  }

  /** Its own size, or smaller where that would not fit into this. */
  public static PictureSize within(Picture picture, double widest, double highest) {
    double scale = Math.min(1, Math.min(widest / picture.width(), highest / picture.height()));
    return new PictureSize(scaled(picture.width(), scale), scaled(picture.height(), scale));
  }

  private static int scaled(int length, double scale) {
    return Math.max(1, (int) Math.round(length * scale));
  }
}
