package limberboard.library;

import io.methvin.watcher.DirectoryChangeEvent;
import io.methvin.watcher.DirectoryWatcher;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Watches a workspace's pages, boats and words, and calls once things have been quiet for a moment
 * after a change. The call comes on the watch's own thread.
 */
public final class LibraryWatch implements Closeable {
  private final Duration quiet;
  private final Runnable changed;
  private final ScheduledExecutorService timer;
  private final DirectoryWatcher watcher;
  private ScheduledFuture<?> waiting;

  private LibraryWatch(WorkspaceFolders folders, Duration quiet, Runnable changed)
      throws IOException {
    this.quiet = quiet;
    this.changed = changed;
    List<Path> watched =
        Stream.of(folders.articles(), folders.boats(), folders.words())
            .filter(Files::isDirectory)
            .toList();
    this.watcher = DirectoryWatcher.builder().paths(watched).listener(this::seen).build();
    this.timer =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              Thread thread = new Thread(task, "library-watch");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Starts watching.
   *
   * @param folders the workspace
   * @param quiet how long nothing more may change before the call
   * @param changed what to call
   * @throws IOException when the folders cannot be watched
   */
  public static LibraryWatch start(WorkspaceFolders folders, Duration quiet, Runnable changed)
      throws IOException {
    LibraryWatch watch = new LibraryWatch(folders, quiet, changed);
    Thread thread = new Thread(watch.watcher::watch, "library-watch-files");
    thread.setDaemon(true);
    thread.start();
    return watch;
  }

  private void seen(DirectoryChangeEvent event) {
    if (isOfInterest(event.path())) {
      callLater();
    }
  }

  private synchronized void callLater() {
    if (waiting != null) {
      waiting.cancel(false);
    }
    if (!timer.isShutdown()) {
      waiting = timer.schedule(changed, quiet.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  /** Temporary and hidden files come and go without meaning anything. */
  private static boolean isOfInterest(Path path) {
    Path name = path == null ? null : path.getFileName();
    return name == null || !name.toString().startsWith(".");
  }

  @Override
  public void close() throws IOException {
    timer.shutdownNow();
    watcher.close();
  }
}
