package limberboard.search;

import java.io.IOException;
import java.util.Optional;
import org.apache.lucene.index.DirectoryReader;

/**
 * One state of the index that queries are answered from, counted while they use it. There may be
 * nothing in it yet.
 */
final class IndexState {
  private final Optional<DirectoryReader> reader;
  private final Optional<Finder> finder;

  private IndexState(Optional<DirectoryReader> reader, Optional<Finder> finder) {
    this.reader = reader;
    this.finder = finder;
  }

  /** The state before anything was indexed. */
  static IndexState nothing() {
    return new IndexState(Optional.empty(), Optional.empty());
  }

  /** A state that takes over one reference to the reader. */
  static IndexState of(DirectoryReader reader, Finder finder) {
    return new IndexState(Optional.of(reader), Optional.of(finder));
  }

  Optional<DirectoryReader> reader() {
    return reader;
  }

  /** Begins to use it; false when it has just been replaced. */
  boolean enter() {
    return reader.map(DirectoryReader::tryIncRef).orElse(true);
  }

  /** Ends using it, or gives it up. */
  void leave() throws IOException {
    if (reader.isPresent()) {
      reader.get().decRef();
    }
  }

  SearchResults find(SearchQuery query) throws IOException {
    return finder.isPresent() ? finder.get().find(query) : SearchResults.none();
  }
}
