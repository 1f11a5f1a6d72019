package limberboard.history;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.eclipse.jgit.lib.Repository;

/**
 * The right to change a repository, held by one of Limberboard's programs at a time. It is a lock
 * of the system, which a program that is killed gives back. Git's own locks are files, which a
 * killed program leaves behind; whoever finds that the last holder was killed takes them away.
 */
public final class RepositoryLock implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final long PLACE = Long.MAX_VALUE - 1;
  private static final String ENDING = ".lock";

  private final FileChannel channel;

  private RepositoryLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Waits for the lock.
   *
   * @throws HistoryTrouble when others hold it for too long, or the folder may not be written
   */
  public static RepositoryLock take(Repository repository) throws IOException {
    Path folder = repository.getDirectory().toPath();
    FileChannel channel = open(folder);
    try {
      await(channel);
      return held(folder, channel);
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /**
   * Takes the lock without waiting; empty while another holds it.
   *
   * @throws HistoryTrouble when the folder may not be written
   */
  public static Optional<RepositoryLock> ifFree(Repository repository) throws IOException {
    Path folder = repository.getDirectory().toPath();
    FileChannel channel = open(folder);
    try {
      if (taken(channel)) {
        return Optional.of(held(folder, channel));
      }
      channel.close();
      return Optional.empty();
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  private static RepositoryLock held(Path folder, FileChannel channel) throws IOException {
    if (channel.size() > 0) {
      clean(folder);
    }
    channel.write(ByteBuffer.wrap(new byte[] {'b', 'u', 's', 'y'}), 0);
    return new RepositoryLock(channel);
  }

  private static FileChannel open(Path folder) throws IOException {
    try {
      return FileChannel.open(
          folder.resolve("limberboard.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    } catch (IOException e) {
      throw new HistoryTrouble(
          "the history in " + folder + " may not be written",
          "change the permissions of that folder, or ask whoever keeps it; nothing was changed");
    }
  }

  private static void await(FileChannel channel) throws IOException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!taken(channel)) {
      if (System.nanoTime() > end) {
        throw new HistoryTrouble(
            "another program is recording or sharing all the time",
            "wait for it, or end it, and try again; nothing was changed");
      }
      try {
        TimeUnit.MILLISECONDS.sleep(20);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new HistoryTrouble("stopped while waiting for another program", "try again");
      }
    }
  }

  private static boolean taken(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock(PLACE, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** Takes away what a killed program has left. */
  private static void clean(Path folder) throws IOException {
    for (String name : List.of("index", "HEAD", "config", "packed-refs")) {
      Files.deleteIfExists(folder.resolve(name + ENDING));
    }
    Path refs = folder.resolve("refs");
    if (Files.isDirectory(refs)) {
      try (Stream<Path> files = Files.walk(refs)) {
        for (Path file : files.filter(each -> each.toString().endsWith(ENDING)).toList()) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      channel.truncate(0);
    }
  }
}
