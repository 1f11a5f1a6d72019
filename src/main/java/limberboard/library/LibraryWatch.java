package limberboard.library;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import limberboard.library.file.FolderState;
import limberboard.library.file.WatchedFolders;
import limberboard.library.file.WorkspaceFolders;

/**
 * Watches a workspace's pages, boats and words, and calls once things have been quiet for a moment
 * after a change. Folders made later are watched as well. Besides listening to the system it looks
 * at all files now and then, because on some disks and shares the system tells nothing.
 *
 * <p>To miss nothing, start watching first, and call {@link #reading} each time before the files
 * are read: a change from then on is called for, one of before is not, since it is read anyway. The
 * call comes on the watch's own thread.
 */
public final class LibraryWatch implements Closeable {
  private static final Duration USUAL_LOOK = Duration.ofSeconds(10);

  /** At most one part in so many of the time is spent on looking. */
  private static final int SHARE = 50;

  private final Duration quiet;
  private final Duration look;
  private final Runnable changed;
  private final ScheduledExecutorService timer;
  private final WatchService service;
  private final WatchedFolders watched;
  private final FolderState state;
  private ScheduledFuture<?> waiting;

  private LibraryWatch(WorkspaceFolders folders, Duration quiet, Duration look, Runnable changed)
      throws IOException {
    this.quiet = quiet;
    this.look = look;
    this.changed = changed;
    this.service = folders.root().getFileSystem().newWatchService();
    this.watched = new WatchedFolders(folders, service);
    this.state = new FolderState(() -> WatchedFolders.ofInterest(folders), InstantSource.system());
    this.timer = Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "library-watch"));
  }

  private static Thread daemon(Runnable task, String name) {
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Starts watching. Every change after this has returned is called for.
   *
   * @param folders the workspace
   * @param quiet how long nothing more may change before the call
   * @param changed what to call
   * @throws IOException when nothing can be watched on this disk
   */
  public static LibraryWatch start(WorkspaceFolders folders, Duration quiet, Runnable changed)
      throws IOException {
    return start(folders, quiet, USUAL_LOOK, changed);
  }

  static LibraryWatch start(
      WorkspaceFolders folders, Duration quiet, Duration look, Runnable changed)
      throws IOException {
    LibraryWatch watch = new LibraryWatch(folders, quiet, look, changed);
    watch.watched.renew();
    watch.state.look();
    daemon(watch::listen, "library-watch-files").start();
    watch.lookLater(look);
    return watch;
  }

  /** Says that the files are about to be read: what has changed before needs no call. */
  public void reading() {
    watched.renew();
    state.look();
  }

  private void listen() {
    try {
      while (true) {
        WatchKey key = service.take();
        if (key.pollEvents().stream().anyMatch(LibraryWatch::isOfInterest)) {
          callLater();
        }
        key.reset();
      }
    } catch (ClosedWatchServiceException e) {
      // closed: there is nothing to listen to any more
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** An event without a file says that others were lost. */
  private static boolean isOfInterest(WatchEvent<?> event) {
    return !(event.context() instanceof java.nio.file.Path path) || !WatchedFolders.isHidden(path);
  }

  private synchronized void callLater() {
    if (waiting != null) {
      waiting.cancel(false);
    }
    if (!timer.isShutdown()) {
      waiting = timer.schedule(this::callIfChanged, quiet.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  private synchronized void lookLater(Duration pause) {
    if (!timer.isShutdown()) {
      timer.schedule(this::lookNow, pause.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  private void lookNow() {
    long before = System.nanoTime();
    try {
      callIfChanged();
    } finally {
      Duration taken = Duration.ofNanos(System.nanoTime() - before).multipliedBy(SHARE);
      lookLater(taken.compareTo(look) > 0 ? taken : look);
    }
  }

  /** New folders are watched first and looked into afterwards, so that nothing falls between. */
  private void callIfChanged() {
    watched.renew();
    if (state.look()) {
      changed.run();
    }
  }

  @Override
  public synchronized void close() throws IOException {
    timer.shutdownNow();
    service.close();
  }
}
