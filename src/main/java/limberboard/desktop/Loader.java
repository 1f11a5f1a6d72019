package limberboard.desktop;

import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Session;
import limberboard.desktop.find.SearchModel;

/** Reads the workspace at the start and whenever its files change, then readies the search. */
final class Loader {
  private final Outside.Reader reader;
  private final Outside.Index index;
  private final Background background;
  private final Session session;
  private final SearchModel search;

  Loader(
      Outside.Reader reader,
      Outside.Index index,
      Background background,
      Session session,
      SearchModel search) {
    this.reader = reader;
    this.index = index;
    this.background = background;
    this.session = session;
    this.search = search;
  }

  /** Reads everything as it is now. */
  void load() {
    background.run("Reading the library", reader::read, this::take);
  }

  private void take(Workspace workspace) {
    session.replace(workspace);
    background.run("Preparing the search", () -> index.update(workspace.library()), search::ready);
  }
}
