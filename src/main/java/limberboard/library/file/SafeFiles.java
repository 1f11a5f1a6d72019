package limberboard.library.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Writes files so that a killed process or a full disk leaves either the old file or the new one:
 * to a temporary file beside it, synced, then renamed. The new file keeps the old one's
 * permissions, and its owner and group where the system lets us. A link is written through: what it
 * leads to is replaced, the link stays.
 */
public final class SafeFiles {
  private static final String ENDING = ".tmp";
  private static final Pattern TEMPORARY = Pattern.compile("\\.([^/\\\\]+)-[0-9]+\\.tmp\\b");
  private static final Random RANDOM = new SecureRandom();

  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private SafeFiles() {}

  /**
   * Writes a text as UTF-8, making folders where needed.
   *
   * @throws IOException when it cannot be written; the old file is then still there, whole
   */
  public static void write(Path file, String text) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes, making folders where needed.
   *
   * @throws IOException when they cannot be written, the place is taken by something that is no
   *     ordinary file, or the old file is protected against writing; the old file is then still
   *     there, whole
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    Path target = target(file);
    Files.createDirectories(target.getParent());
    Path temporary = prepared(target, bytes);
    try {
      sync(temporary);
      replace(temporary, target);
      syncFolder(target.getParent());
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /**
   * Writes bytes beside a file, with the file's permissions; not synced yet.
   *
   * @return where they are
   */
  static Path prepared(Path target, byte[] bytes) throws IOException {
    Path temporary = temporary(target);
    boolean whole = false;
    try {
      if (Files.exists(target)) {
        Files.copy(target, temporary, StandardCopyOption.COPY_ATTRIBUTES);
        keepGroup(target, temporary);
      } else {
        Files.newByteChannel(
                temporary, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))
            .close();
      }
      fill(temporary, bytes);
      whole = true;
      return temporary;
    } finally {
      if (!whole) {
        Files.deleteIfExists(temporary);
      }
    }
  }

  /**
   * Gives a file another name in its folder or another folder that is there. Where nothing has that
   * name any more because it was done before, nothing happens.
   *
   * @throws java.nio.file.FileAlreadyExistsException when both are there
   * @throws IOException when it cannot be done; the file then has its old name
   */
  public static void rename(Path from, Path to) throws IOException {
    WriteLock lock = WriteLock.take(to, PATIENCE);
    try {
      boolean was = FileBytes.isThere(from);
      if (was && FileBytes.isThere(to)) {
        throw new FileAlreadyExistsException(to.toString());
      }
      if (was) {
        clean(from);
        Files.move(from, to);
        syncFolder(to.getParent());
        syncFolder(from.getParent());
      }
    } finally {
      lock.release();
    }
  }

  /**
   * The file that is really written for a path: what a link leads to, otherwise the path itself.
   *
   * @throws IOException when it is a link to nothing or to itself, no ordinary file, or protected
   */
  static Path target(Path file) throws IOException {
    Path target = file.toAbsolutePath();
    if (Files.isSymbolicLink(target)) {
      if (!Files.exists(target)) {
        throw new FileSystemException(file.toString(), null, "it is a link that leads to nothing");
      }
      target = target.toRealPath();
    }
    if (Files.exists(target)) {
      if (!Files.isRegularFile(target)) {
        throw new FileSystemException(file.toString(), null, "it is not an ordinary file");
      }
      if (!Files.isWritable(target)) {
        throw new AccessDeniedException(file.toString());
      }
    }
    return target;
  }

  /**
   * Takes away what killed runs have left behind beside a file. Only for one who holds the file's
   * {@link WriteLock}: nobody else is writing it then.
   */
  static void clean(Path target) throws IOException {
    String begin = begin(target);
    try (DirectoryStream<Path> files = Files.newDirectoryStream(target.getParent())) {
      for (Path file : files) {
        String name = file.getFileName().toString();
        if (name.startsWith(begin)
            && name.endsWith(ENDING)
            && name.substring(begin.length(), name.length() - ENDING.length()).matches("[0-9]+")) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  /** The name of the file that was to be written, for that of a temporary one; others as is. */
  static String lasting(String file) {
    return TEMPORARY.matcher(file).replaceAll("$1");
  }

  private static String begin(Path target) {
    return "." + target.getFileName() + "-";
  }

  private static Path temporary(Path target) {
    return target.resolveSibling(begin(target) + Long.toUnsignedString(RANDOM.nextLong()) + ENDING);
  }

  private static void fill(Path temporary, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            temporary, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
    }
  }

  /** Waits until a file is on the disk. */
  static void sync(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** The group can be kept even by one who may not give the file to its owner. */
  private static void keepGroup(Path from, Path to) {
    try {
      PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
      PosixFileAttributeView now = Files.getFileAttributeView(to, PosixFileAttributeView.class);
      if (old != null && now != null) {
        now.setGroup(old.readAttributes().group());
        now.setPermissions(old.readAttributes().permissions());
      }
    } catch (IOException | UnsupportedOperationException e) {
      // the system does not let us; the permissions were copied with the file
    }
  }

  /** Puts a prepared file into its place, in one step where the system can. */
  static void replace(Path temporary, Path target) throws IOException {
    try {
      Files.move(
          temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Makes the renaming itself last; some systems do not let a folder be opened, and need not. */
  static void syncFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // the file's own content is synced already
    }
  }
}
