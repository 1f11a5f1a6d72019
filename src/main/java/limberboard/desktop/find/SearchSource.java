package limberboard.desktop.find;

import java.io.IOException;
import limberboard.search.SearchQuery;
import limberboard.search.SearchResults;

/** What can be searched. Called off the event thread. */
@FunctionalInterface
public interface SearchSource {
  /**
   * Searches.
   *
   * @throws IOException when the index cannot be read
   */
  SearchResults find(SearchQuery query) throws IOException;
}
