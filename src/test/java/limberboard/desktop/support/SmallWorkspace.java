package limberboard.desktop.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;

/** The small workspace of the window's tests, copied so that a test may change it. */
public final class SmallWorkspace {
  /** The day it is in the tests. */
  public static final LocalDate TODAY = LocalDate.of(2026, 5, 20);

  private SmallWorkspace() {}

  /** A copy in an empty folder. */
  public static WorkspaceFolders copyTo(Path folder) {
    try (Stream<Path> files = Files.walk(source())) {
      for (Path file : files.toList()) {
        Path target = folder.resolve(source().relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new WorkspaceFolders(folder);
  }

  private static Path source() {
    try {
      return Path.of(
          SmallWorkspace.class.getResource("/limberboard/desktop/small-workspace").toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What is in it. */
  public static Workspace read(WorkspaceFolders folders) {
    try {
      return new WorkspaceReader(folders).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is in it, as it comes. */
  public static Workspace read() {
    return read(new WorkspaceFolders(source()));
  }

  /** A clock that stands at {@link #TODAY}. */
  public static Clock clock() {
    return Clock.fixed(TODAY.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC);
  }
}
