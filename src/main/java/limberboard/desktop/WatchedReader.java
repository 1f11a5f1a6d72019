package limberboard.desktop;

import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import limberboard.boat.Workspace;
import limberboard.library.LibraryWatch;
import limberboard.library.TypingReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;

/**
 * Reads the workspace and watches its files from before the first reading on, so that no change
 * falls between. What has changed before a reading is not called for again. For one thread.
 */
final class WatchedReader implements WindowServices.Reader, AutoCloseable {
  private final WorkspaceFolders folders;
  private final WindowServices.Reader reader;
  private final Duration quiet;
  private Runnable changed = () -> {};
  private Consumer<IOException> unwatched = failure -> {};
  private Optional<LibraryWatch> watch = Optional.empty();
  private boolean refused;

  /**
   * A reader that watches nothing yet.
   *
   * @param folders the workspace
   * @param reader reads it
   * @param quiet how long nothing more may change before a change is told
   */
  WatchedReader(WorkspaceFolders folders, WindowServices.Reader reader, Duration quiet) {
    this.folders = folders;
    this.reader = reader;
    this.quiet = quiet;
  }

  /**
   * Says what happens after a change, on a thread of its own, and when nothing can be watched.
   * Called before the first reading.
   */
  void onChange(Runnable action, Consumer<IOException> notWatched) {
    changed = action;
    unwatched = notWatched;
  }

  @Override
  public Workspace read() throws IOException {
    if (watch.isEmpty() && !refused) {
      start();
    }
    watch.ifPresent(LibraryWatch::reading);
    return reader.read();
  }

  private void start() {
    try {
      watch = Optional.of(LibraryWatch.start(folders, quiet, changed));
    } catch (IOException e) {
      refused = true;
      unwatched.accept(e);
    }
  }

  @Override
  public TypingReader typing(String path, Kind kind) {
    return reader.typing(path, kind);
  }

  @Override
  public void close() throws IOException {
    if (watch.isPresent()) {
      watch.get().close();
    }
  }
}
