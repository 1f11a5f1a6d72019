package limberboard.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import limberboard.library.PictureSafety;
import limberboard.library.WorkspaceFolders;

/**
 * The pictures below a workspace's {@code articles/}. Nothing outside it is ever read, by whatever
 * path or link, and nothing over a network. Immutable; any thread.
 */
public final class Pictures {
  private final Optional<WorkspaceFolders> folders;

  private Pictures(Optional<WorkspaceFolders> folders) {
    this.folders = folders;
  }

  /** The pictures of a workspace. */
  public static Pictures in(WorkspaceFolders folders) {
    return new Pictures(Optional.of(folders));
  }

  /** No pictures: pages show descriptions in their place. */
  public static Pictures none() {
    return new Pictures(Optional.empty());
  }

  /**
   * Reads a picture.
   *
   * @param path relative to the workspace, with {@code /}, or a drawing that stands in the page
   * @param look whose colours a drawing gets
   * @return the picture; empty when there is none, or it cannot be read or must not be shown
   */
  public Optional<Picture> find(String path, Look look) {
    if (DrawnInPage.is(path)) {
      return DrawnInPage.svg(path).flatMap(svg -> SvgPicture.parse(svg, look)).map(p -> p);
    }
    return folders.flatMap(found -> file(found, path)).flatMap(file -> read(file, look));
  }

  /**
   * What tells whether a picture is another one than before: when its file was changed, and how
   * long it is. Empty for a drawing that stands in the page, and when there is no file.
   */
  public String state(String path) {
    return DrawnInPage.is(path)
        ? ""
        : folders.flatMap(found -> file(found, path)).map(Pictures::state).orElse("");
  }

  private static String state(Path file) {
    try {
      return Files.getLastModifiedTime(file) + " " + Files.size(file);
    } catch (IOException e) {
      return "";
    }
  }

  private static Optional<Path> file(WorkspaceFolders folders, String path) {
    try {
      Path articles = folders.articles().toRealPath();
      Path file = folders.root().resolve(path).toRealPath();
      boolean shown = file.startsWith(articles) && PictureSafety.wrong(file).isEmpty();
      return shown ? Optional.of(file) : Optional.empty();
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static Optional<Picture> read(Path file, Look look) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      boolean svg = file.toString().toLowerCase(Locale.ROOT).endsWith(".svg");
      return svg
          ? SvgPicture.parse(new String(bytes, StandardCharsets.UTF_8), look).map(p -> p)
          : RasterPicture.read(bytes).map(p -> p);
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
