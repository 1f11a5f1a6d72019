package limberboard.library.file;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Writes many files as {@link SafeFiles} writes one, each whole or not at all, but waits for the
 * disk for several at once: they are prepared beside their places, synced together, and then each
 * put into its place. What was prepared and not placed is taken away in the end. For one thread.
 */
public final class FileBatch implements AutoCloseable {
  private static final int AT_ONCE = 16;

  private final Map<Path, Prepared> prepared = new LinkedHashMap<>();
  private final Set<Path> touched = new HashSet<>();
  private final ExecutorService syncing =
      Executors.newFixedThreadPool(
          AT_ONCE,
          work -> {
            Thread thread = new Thread(work, "syncing files");
            thread.setDaemon(true);
            return thread;
          });

  private record Prepared(Path target, Path temporary) {}

  /**
   * Prepares a file, making folders where needed.
   *
   * @throws IOException when it cannot be written; the old file is as it was
   */
  public void prepare(Path file, byte[] bytes) throws IOException {
    Path target = SafeFiles.target(file);
    Files.createDirectories(target.getParent());
    prepared.put(file, new Prepared(target, SafeFiles.prepared(target, bytes)));
  }

  /**
   * Waits until all that was prepared is on the disk.
   *
   * @throws IOException when the disk does not take it
   */
  public void sync() throws IOException {
    Map<Path, Future<?>> waiting = new LinkedHashMap<>();
    prepared.forEach(
        (file, each) ->
            waiting.put(
                file,
                syncing.submit(
                    () -> {
                      SafeFiles.sync(each.temporary());
                      return true;
                    })));
    for (Map.Entry<Path, Future<?>> each : waiting.entrySet()) {
      try {
        each.getValue().get();
      } catch (ExecutionException e) {
        throw e.getCause() instanceof IOException trouble ? trouble : new IOException(e.getCause());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new InterruptedIOException("stopped while writing " + each.getKey());
      }
    }
  }

  /**
   * Puts a prepared and synced file into its place.
   *
   * @throws IOException when that cannot be done; the old file is then still there, whole
   */
  public void place(Path file) throws IOException {
    Prepared each = prepared.get(file);
    SafeFiles.replace(each.temporary(), each.target());
    prepared.remove(file);
    touched.add(each.target().getParent());
  }

  /** Makes the places themselves last. */
  public void end() {
    touched.forEach(SafeFiles::syncFolder);
    touched.clear();
  }

  @Override
  public void close() throws IOException {
    syncing.shutdownNow();
    end();
    for (Prepared each : prepared.values()) {
      Files.deleteIfExists(each.temporary());
    }
  }

  /**
   * Takes away what a killed program has prepared for these files. Only where nobody else writes
   * them.
   */
  public static void clear(Collection<Path> files) throws IOException {
    Map<Path, Set<String>> byFolder = new HashMap<>();
    for (Path file : files) {
      byFolder
          .computeIfAbsent(file.getParent(), key -> new HashSet<>())
          .add(file.getFileName().toString());
    }
    for (Map.Entry<Path, Set<String>> each : byFolder.entrySet()) {
      if (!Files.isDirectory(each.getKey())) {
        continue;
      }
      try (DirectoryStream<Path> there = Files.newDirectoryStream(each.getKey(), ".*.tmp")) {
        for (Path file : there) {
          String name = file.getFileName().toString();
          String lasting = SafeFiles.lasting(name);
          if (!lasting.equals(name) && each.getValue().contains(lasting)) {
            Files.deleteIfExists(file);
          }
        }
      }
    }
  }
}
