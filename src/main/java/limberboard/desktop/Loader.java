package limberboard.desktop;

import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Session;
import limberboard.desktop.find.SearchModel;

/**
 * Reads the workspace at the start and whenever its files change, then readies the search. Asked
 * again before a reading has begun, it reads once.
 */
final class Loader {
  private final WindowServices.Reader reader;
  private final WindowServices.Index index;
  private final Background background;
  private final Session session;
  private final SearchModel search;
  private Runnable read = () -> {};
  private final AtomicBoolean waiting = new AtomicBoolean();

  Loader(
      WindowServices.Reader reader,
      WindowServices.Index index,
      Background background,
      Session session,
      SearchModel search) {
    this.reader = reader;
    this.index = index;
    this.background = background;
    this.session = session;
    this.search = search;
  }

  /** Says what is done each time that the workspace has been read. */
  void afterReading(Runnable action) {
    read = action;
  }

  /** Reads everything as it is now. */
  void load() {
    if (waiting.compareAndSet(false, true)) {
      background.run("Reading the library", this::read, this::take);
    }
  }

  private Workspace read() throws IOException {
    waiting.set(false);
    return reader.read();
  }

  private void take(Workspace workspace) {
    session.replace(workspace);
    read.run();
    background.run("Preparing the search", () -> index.update(workspace.library()), search::ready);
  }
}
