package limberboard.print.picture;

import java.awt.Image;

/** A picture of the workspace that can be shown. */
public sealed interface Picture permits SvgPicture, RasterPicture {
  /** Its natural width in CSS pixels, at least 1. */
  int width();

  /** Its natural height in CSS pixels, at least 1. */
  int height();

  /**
   * The picture for a place of this size on screen, sharp at every screen resolution.
   *
   * @param width of the place, in user-space pixels
   * @param height of the place, in user-space pixels
   */
  Image image(int width, int height);
}
