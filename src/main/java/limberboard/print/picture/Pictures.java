package limberboard.print.picture;

import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.picture.PictureSafety;

/**
 * The pictures below a workspace's {@code articles/}. Nothing outside it is ever read, by whatever
 * path or link, and nothing over a network. What was read is kept as long as its file stays as it
 * is and memory allows. Any thread.
 */
public final class Pictures {
  private static final int MOST_KEPT = 100;

  private final Optional<WorkspaceFolders> folders;
  private final Map<Asked, SoftReference<Found>> kept = new Kept();

  /**
   * A picture file, or a drawing that stands in a page, in the colours of a look. Of a drawing it
   * holds a number alone, so that it takes no room once the drawing itself, which is what it is
   * known again by, has gone.
   */
  private record Asked(Object source, Look look) {}

  /** What came of reading: a picture, or why there is none. */
  private record Found(String state, Optional<Picture> picture, Optional<String> wrong) {
    public static Found wrong(String state, String why) {
      return new Found(state, Optional.empty(), Optional.of(why));
    }
  }

  /** The latest that were asked for. */
  private static final class Kept extends LinkedHashMap<Asked, SoftReference<Found>> {
    @java.io.Serial private static final long serialVersionUID = 1L;

    Kept() {
      super(MOST_KEPT, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<Asked, SoftReference<Found>> eldest) {
      return size() > MOST_KEPT;
    }
  }

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
    return found(path, look).picture();
  }

  /** Why a picture is not shown, such as {@code is broken}; empty when it is. */
  public Optional<String> wrong(String path, Look look) {
    return DrawnInPage.is(path) || folders.isEmpty() ? Optional.empty() : found(path, look).wrong();
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
      return Optional.of(file).filter(real -> real.startsWith(articles));
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }

  private synchronized Found found(String path, Look look) {
    if (DrawnInPage.is(path)) {
      return kept(new Asked(path.hashCode(), look), path, () -> drawn(path, look));
    }
    Optional<Path> file = folders.flatMap(known -> file(known, path));
    if (file.isEmpty()) {
      return Found.wrong("", "is not there");
    }
    String state = state(file.get());
    return kept(new Asked(file.get(), look), state, () -> read(file.get(), state, look));
  }

  private Found kept(Asked asked, String state, Supplier<Found> reading) {
    Found known = kept.getOrDefault(asked, new SoftReference<>(null)).get();
    if (known == null || state.isEmpty() || !known.state().equals(state)) {
      known = reading.get();
      kept.put(asked, new SoftReference<>(known));
    }
    return known;
  }

  private static Found drawn(String path, Look look) {
    Optional<Picture> picture =
        DrawnInPage.svg(path).flatMap(svg -> SvgPicture.parse(svg, look)).map(p -> p);
    return new Found(path, picture, Optional.empty());
  }

  private static Found read(Path file, String state, Look look) {
    Optional<String> wrong = PictureSafety.wrong(file);
    if (wrong.isPresent()) {
      return Found.wrong(state, wrong.get());
    }
    try {
      byte[] bytes = Files.readAllBytes(file);
      boolean svg = file.toString().toLowerCase(Locale.ROOT).endsWith(".svg");
      Optional<Picture> picture =
          svg
              ? SvgPicture.parse(new String(bytes, StandardCharsets.UTF_8), look).map(p -> p)
              : RasterPicture.read(bytes).map(p -> p);
      return picture.isPresent()
          ? new Found(state, picture, Optional.empty())
          : Found.wrong(state, "cannot be drawn");
    } catch (IOException e) {
      return Found.wrong(state, "cannot be read");
    }
  }
}
