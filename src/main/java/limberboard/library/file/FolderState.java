package limberboard.library.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.zip.CRC32;

/**
 * What the files of some folders looked like from outside when they were last looked at: size, time
 * and place on the disk, and the content's checksum as long as the time is too young to be trusted.
 * Hidden files are not looked at. Safe for several threads.
 */
public final class FolderState {
  private static final long LARGEST_SUMMED = 16_000_000;
  private final Supplier<List<Path>> roots;
  private final InstantSource clock;
  private Map<Path, FileStamp> files = Map.of();

  private record FileStamp(long size, FileTime time, Object place, OptionalLong sum) {
    boolean looksLike(BasicFileAttributes now) {
      return size == now.size()
          && time.equals(now.lastModifiedTime())
          && Objects.equals(place, now.fileKey());
    }
  }

  /**
   * Nothing looked at so far.
   *
   * @param roots the folders; asked for each time
   * @param clock says how young a file is
   */
  public FolderState(Supplier<List<Path>> roots, InstantSource clock) {
    this.roots = roots;
    this.clock = clock;
  }

  /**
   * Looks at all files.
   *
   * @return whether any has come, gone or changed since they were last looked at
   */
  public synchronized boolean look() {
    Look look = new Look(files, clock.instant());
    for (Path root : roots.get()) {
      look.in(root);
    }
    boolean changed = look.changed || !look.found.keySet().equals(files.keySet());
    files = look.found;
    return changed;
  }

  private static final class Look extends VisibleFiles {
    private final Map<Path, FileStamp> before;
    private final Instant now;
    private final Map<Path, FileStamp> found = new HashMap<>();
    private boolean changed;

    Look(Map<Path, FileStamp> before, Instant now) {
      this.before = before;
      this.now = now;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      if (!WatchedFolders.isHidden(file)) {
        try {
          note(file, attributes.isSymbolicLink() ? behind(file) : attributes);
        } catch (IOException e) {
          // gone again meanwhile
        }
      }
      return FileVisitResult.CONTINUE;
    }

    private static BasicFileAttributes behind(Path link) throws IOException {
      return Files.exists(link)
          ? Files.readAttributes(link, BasicFileAttributes.class)
          : Files.readAttributes(link, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    }

    private void note(Path file, BasicFileAttributes attributes) {
      FileStamp old = before.get(file);
      boolean same = old != null && old.looksLike(attributes);
      boolean young = FileAge.isYoung(attributes.lastModifiedTime(), now);
      boolean doubtful = same && old.sum().isPresent();
      OptionalLong sum = young || doubtful ? sum(file, attributes) : OptionalLong.empty();
      if (!same || doubtful && !old.sum().equals(sum)) {
        changed = true;
      }
      found.put(
          file,
          new FileStamp(
              attributes.size(),
              attributes.lastModifiedTime(),
              attributes.fileKey(),
              young ? sum : OptionalLong.empty()));
    }

    private static OptionalLong sum(Path file, BasicFileAttributes attributes) {
      if (!attributes.isRegularFile() || attributes.size() > LARGEST_SUMMED) {
        return OptionalLong.empty();
      }
      CRC32 sum = new CRC32();
      try (InputStream in = Files.newInputStream(file)) {
        byte[] buffer = new byte[8192];
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
          sum.update(buffer, 0, read);
        }
      } catch (IOException e) {
        return OptionalLong.empty();
      }
      return OptionalLong.of(sum.getValue());
    }
  }
}
