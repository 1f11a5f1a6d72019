package limberboard.desktop.read;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.print.picture.Look;
import limberboard.print.picture.Picture;
import limberboard.print.picture.Pictures;
import limberboard.print.picture.SvgPicture;

/**
 * The pictures that pages name by paths relative to themselves. May be used from any thread, best
 * not the event thread.
 */
public final class PagePictures {
  private final Pictures pictures;

  /** The pictures of a workspace. */
  public PagePictures(Pictures pictures) {
    this.pictures = pictures;
  }

  /**
   * A picture that a page names.
   *
   * @param page the page's path, relative to the workspace
   * @param picture the picture's path, relative to the page
   * @param dark whether it is for a dark ground
   * @return empty when there is none, or none that may be shown
   */
  public Optional<Picture> picture(String page, String picture, boolean dark) {
    try {
      String path = Path.of(page).resolveSibling(picture).normalize().toString();
      return pictures.find(path.replace('\\', '/'), dark ? Look.DARK : Look.LIGHT);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** The same, when it is a drawing. */
  public Optional<SvgPicture> drawing(String page, String picture, boolean dark) {
    return picture(page, picture, dark)
        .filter(SvgPicture.class::isInstance)
        .map(SvgPicture.class::cast);
  }
}
