package limberboard.desktop;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Session;
import limberboard.desktop.find.SearchModel;
import limberboard.library.Library;
import limberboard.library.page.Page;

/**
 * Reads the workspace at the start and whenever its files change, then readies the search. Asked
 * again before a reading has begun, it reads once.
 */
final class Loader {
  private final WindowServices.Reader reader;
  private final WindowServices.Index index;
  private final Background background;
  private final Background quick;
  private final Session session;
  private final SearchModel search;
  private Runnable read = () -> {};
  private final AtomicBoolean waiting = new AtomicBoolean();

  /**
   * A loader.
   *
   * @param background reads
   * @param quick lets a saved page be searched while that one still reads
   */
  Loader(
      WindowServices.Reader reader,
      WindowServices.Index index,
      Background background,
      Background quick,
      Session session,
      SearchModel search) {
    this.reader = reader;
    this.index = index;
    this.background = background;
    this.quick = quick;
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

  /**
   * Lets a page be searched that was just saved, at once; what its change means for others is known
   * when the workspace has been read again.
   *
   * @param page the page as it was saved
   * @param targets ids of the pages that it refers to
   */
  void saved(Page<?> page, Collection<String> targets) {
    Library before = session.library();
    if (before.page(page.id()).isPresent()) {
      quick.run(
          "Preparing the search",
          () -> index.update(before.with(page, targets, List.of())),
          search::ready);
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
