package limberboard.library.file;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The right to write one file, held by one thread of one program at a time.
 *
 * <p>It is a lock of the system on a hidden file beside the one that is written ({@code
 * .NAME.lock}), which is there only while somebody writes. The system gives the lock back when a
 * program is killed; the hidden file it leaves then holds nobody up and goes with the next writing.
 * It lies in the same folder because whoever may replace a file there may make one there, and so
 * that all who share the folder, from whichever machine, see the same lock.
 */
final class WriteLock {
  private static final ConcurrentMap<Path, ReentrantLock> HERE = new ConcurrentHashMap<>();

  /** Beyond the end of the file, so that its content can be read while it is locked. */
  private static final long PLACE = Long.MAX_VALUE - 1;

  private static final int ROUNDS = 5;
  private static final int LENGTHS = 4_000;

  private final ReentrantLock here;
  private final Path file;
  private final FileChannel channel;

  private WriteLock(ReentrantLock here, Path file, FileChannel channel) {
    this.here = here;
    this.file = file;
    this.channel = channel;
  }

  /**
   * Waits for the lock.
   *
   * @param target the file to be written; its folder must be there
   * @param patience how long to wait at most
   * @throws IOException when the folder may not be written, or others write for too long
   */
  static WriteLock take(Path target, Duration patience) throws IOException {
    Path folder = target.toAbsolutePath().getParent().toRealPath();
    Path file = folder.resolve("." + target.getFileName() + ".lock");
    ReentrantLock here = HERE.computeIfAbsent(file, key -> new ReentrantLock(true));
    long end = System.nanoTime() + patience.toNanos();
    boolean held = false;
    try {
      if (!here.tryLock(patience.toMillis(), TimeUnit.MILLISECONDS)) {
        throw busy(target);
      }
      FileChannel channel = among(file, target, end);
      held = true;
      return new WriteLock(here, file, channel);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("stopped while waiting to write " + target);
    } finally {
      if (!held && here.isHeldByCurrentThread()) {
        here.unlock();
      }
    }
  }

  /** The lock among programs. */
  private static FileChannel among(Path file, Path target, long end)
      throws IOException, InterruptedException {
    while (true) {
      FileChannel channel = attempt(file);
      if (channel != null) {
        return channel;
      }
      if (System.nanoTime() > end) {
        throw busy(target);
      }
      TimeUnit.MICROSECONDS.sleep(ThreadLocalRandom.current().nextInt(500, 8_000));
    }
  }

  private static FileSystemException busy(Path target) {
    return new FileSystemException(
        target.toString(), null, "it is being written by another program all the time");
  }

  /** The channel that holds the lock, or null when somebody else does. */
  private static FileChannel attempt(Path file) throws IOException {
    FileChannel channel;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    } catch (AccessDeniedException e) {
      if (!Files.exists(file) || !Files.isWritable(file.getParent())) {
        throw new AccessDeniedException(file.getParent().toString());
      }
      takeAwayIfLeft(file);
      return null;
    }
    boolean held = false;
    try {
      FileLock lock = channel.tryLock(PLACE, 1, false);
      held = lock != null && isStillThere(file, channel);
      if (held) {
        openToAll(file);
      }
      return held ? channel : null;
    } finally {
      if (!held) {
        channel.close();
      }
    }
  }

  /**
   * Whether the locked file is the one at its path: its last holder may have taken it away, and
   * others may have made another since. The path is only looked at and not opened, because on many
   * systems closing any channel of a file gives up the program's lock on it: the locked file is
   * given lengths at random, and the path must show each of them.
   */
  private static boolean isStillThere(Path file, FileChannel channel) throws IOException {
    for (int round = 0; round < ROUNDS; round++) {
      int length = ThreadLocalRandom.current().nextInt(1, LENGTHS);
      channel.truncate(0);
      channel.write(ByteBuffer.wrap(new byte[length]));
      if (lengthAt(file) != length) {
        return false;
      }
    }
    channel.truncate(0);
    return true;
  }

  private static long lengthAt(Path file) throws IOException {
    try {
      return Files.size(file);
    } catch (NoSuchFileException e) {
      return -1;
    }
  }

  /** Lets other users of a shared folder take the lock should this program be killed. */
  private static void openToAll(Path file) {
    try {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-rw-"));
    } catch (IOException | UnsupportedOperationException e) {
      // another user's, who has opened it to all already, or a system without permissions
    }
  }

  /** Takes away another user's lock file that nobody holds any more. */
  private static void takeAwayIfLeft(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      if (channel.tryLock(PLACE, 1, true) != null) {
        Files.deleteIfExists(file);
      }
    } catch (NoSuchFileException | AccessDeniedException e) {
      // gone meanwhile, or held by one who will take it away
    }
  }

  /** Gives the lock back; what was written under it stands, whatever becomes of the lock's file. */
  void release() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // it holds nobody up and goes with the next writing
    } finally {
      closeChannel();
      here.unlock();
    }
  }

  private void closeChannel() {
    try {
      channel.close();
    } catch (IOException e) {
      // the system gives the lock back when this program ends
    }
  }
}
