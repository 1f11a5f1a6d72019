package limberboard.desktop;

import java.util.function.Consumer;
import limberboard.desktop.base.Background;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.MissedSearch;
import limberboard.search.MissedSearches;

/**
 * Keeps searches that were of no use, off the event thread; one that cannot be kept is not worth a
 * message.
 *
 * @param folders the workspace
 * @param writing writes
 */
record SearchKeeping(WorkspaceFolders folders, Background writing)
    implements Consumer<MissedSearch> {
  @Override
  public void accept(MissedSearch missed) {
    MissedSearches searches = new MissedSearches(folders);
    writing.run("Keeping a search", () -> searches.add(missed), wrong -> {});
  }
}
