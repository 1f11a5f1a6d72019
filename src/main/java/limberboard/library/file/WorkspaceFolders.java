package limberboard.library.file;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where everything lies in a workspace.
 *
 * @param root the workspace's folder, absolute
 */
public record WorkspaceFolders(Path root) {
  private static final String ARTICLES = "articles";
  private static final String BOATS = "boats";
  private static final String DEMO_BOATS = "demo-boats";

  /** Makes the root absolute. */
  public WorkspaceFolders {
    root = root.toAbsolutePath().normalize();
  }

  /** The nearest folder, from this one upwards, that is a workspace: that has {@code articles}. */
  public static Optional<WorkspaceFolders> around(Path start) {
    for (Path at = start.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
      if (Files.isDirectory(at.resolve(ARTICLES))) {
        return Optional.of(new WorkspaceFolders(at));
      }
    }
    return Optional.empty();
  }

  /** The pages. */
  public Path articles() {
    return root.resolve(ARTICLES);
  }

  /** The boats: {@code boats}, or {@code demo-boats} where only that is there. */
  public Path boats() {
    Path boats = root.resolve(BOATS);
    Path demo = root.resolve(DEMO_BOATS);
    return !Files.isDirectory(boats) && Files.isDirectory(demo) ? demo : boats;
  }

  /** Recorded cases. */
  public Path cases() {
    return boats().resolve("cases");
  }

  /** Letters, one file each, with what is known of each beside it. */
  public Path letters() {
    return boats().resolve("letters");
  }

  /** Hand-kept words for search. */
  public Path words() {
    return root.resolve("index").resolve("words");
  }

  /** The built search index, which can be thrown away at any time. */
  public Path searchIndex() {
    return root.resolve("index").resolve("lucene");
  }

  /**
   * Whether a file of the workspace really lies in it: no link on the way leads out. True of what
   * is not there and of a link to nothing, which lead nowhere at all.
   */
  public boolean holds(Path file) {
    try {
      return file.toRealPath().startsWith(root.toRealPath());
    } catch (IOException e) {
      return file.toAbsolutePath().normalize().startsWith(root);
    }
  }

  /**
   * Where a link of a file leads: a path relative to the root; empty when it leads out or is none.
   *
   * @param from the file, relative to the root
   * @param target the link as it is written, also with a place behind {@code #}
   */
  public Optional<String> linked(String from, String target) {
    try {
      String plain =
          URLDecoder.decode(target.split("#", 2)[0].replace("+", "%2B"), StandardCharsets.UTF_8);
      Path to = root.resolve(from).resolveSibling(plain).normalize();
      return to.startsWith(root) ? Optional.of(relative(to)) : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** A path relative to the root, with {@code /}, as problems and pages name files. */
  public String relative(Path path) {
    return root.relativize(path.toAbsolutePath().normalize()).toString().replace('\\', '/');
  }
}
