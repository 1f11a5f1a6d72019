package limberboard.desktop;

import java.io.IOException;
import java.util.Optional;
import limberboard.desktop.find.SearchSource;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.SearchIndex;

/** The search index of a workspace, opened at the first update. Safe for use by several threads. */
final class OpenIndex {
  private final WorkspaceFolders folders;
  private Optional<SearchIndex> open = Optional.empty();

  OpenIndex(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /**
   * Brings the index up to date.
   *
   * @throws IOException when it cannot be opened or written
   */
  synchronized SearchSource update(Library library) throws IOException {
    if (open.isEmpty()) {
      open = Optional.of(SearchIndex.open(folders));
    }
    SearchIndex index = open.get();
    index.update(library);
    return index::find;
  }
}
