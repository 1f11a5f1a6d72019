package limberboard.search;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.AlreadyClosedException;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.LockObtainFailedException;

/**
 * The search index of a workspace. It lives in the workspace's index folder, belongs to nobody, and
 * can be thrown away at any time: {@link #update} makes it anew. Where it cannot be written (a
 * read-only folder, a full disk, another process that keeps writing) this process goes on with a
 * copy in its own memory, and tries the folder again at the next update.
 *
 * <p>Safe for use by several threads; updates follow one another, queries do not wait for them.
 */
public final class SearchIndex implements Closeable {
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  /** Opens the index's directory; may fail when it is not there and cannot be made. */
  interface Place {
    Directory open() throws IOException;
  }

  private final WorkspaceFolders folders;
  private final Place place;
  private final Duration patience;
  private final PageDigests digests = new PageDigests();
  private Optional<IndexStore> disk = Optional.empty();
  private Optional<IndexStore> memory = Optional.empty();
  private Optional<Library> library = Optional.empty();
  private Words words;
  private volatile IndexState state = IndexState.nothing();
  private volatile boolean closed;

  /** The words in use, and what is made of them. */
  private record Words(
      SearchWords read,
      StopWords stopWords,
      IndexMakeUp stamp,
      Analysis analysis,
      SpellingTable spellings) {
    static Words of(SearchWords read, StopWords stopWords) {
      Analysis analysis = new Analysis(read);
      return new Words(
          read,
          stopWords,
          IndexMakeUp.of(read, stopWords),
          analysis,
          new SpellingTable(read, analysis));
    }
  }

  SearchIndex(WorkspaceFolders folders, Place place, Duration patience) {
    this.folders = folders;
    this.place = place;
    this.patience = patience;
    this.words = Words.of(SearchWords.read(folders), StopWords.english());
  }

  /**
   * Opens a workspace's index as it was last committed; without one, or with a damaged one, nothing
   * is found until the first {@link #update}. Writes nothing.
   *
   * @throws IOException when the folder is there and cannot be read
   */
  public static SearchIndex open(WorkspaceFolders folders) throws IOException {
    SearchIndex index =
        new SearchIndex(folders, () -> FSDirectory.open(folders.searchIndex()), PATIENCE);
    if (Files.isDirectory(folders.searchIndex())) {
      index.useCommitted();
    }
    return index;
  }

  private synchronized void useCommitted() throws IOException {
    Optional<DirectoryReader> committed = disk().committed(words.stamp(), state.reader());
    if (committed.isPresent()) {
      use(committed.get(), new FitKeys(Library.empty()));
    }
  }

  /**
   * Makes the index like a library: only pages that were added, changed or removed are written, and
   * nothing at all when there are none. The words files are read anew; when they have changed,
   * every page is written.
   *
   * @throws IOException when the index is closed, or not even memory can be used
   */
  public synchronized UpdateReport update(Library library) throws IOException {
    if (closed) {
      throw new IOException("the search index is closed");
    }
    this.library = Optional.of(library);
    SearchWords read = SearchWords.read(folders);
    if (!read.equals(words.read())) {
      words = Words.of(read, words.stopWords());
    }
    PagesToIndex wanted = new PagesToIndex(library, digests);
    FitKeys fitKeys = new FitKeys(library);
    try {
      PagesToIndex.Difference written = updateStore(disk(), wanted, fitKeys);
      memory = Optional.empty();
      return report(written, Optional.empty());
    } catch (LockObtainFailedException e) {
      return inMemory(wanted, fitKeys, "another process keeps writing the search index");
    } catch (IOException e) {
      return inMemory(wanted, fitKeys, "the search index cannot be written: " + e.getMessage());
    }
  }

  private UpdateReport inMemory(PagesToIndex wanted, FitKeys fitKeys, String why)
      throws IOException {
    if (memory.isEmpty()) {
      memory = Optional.of(copyOrEmpty());
    }
    return report(updateStore(memory.get(), wanted, fitKeys), Optional.of(why));
  }

  private IndexStore copyOrEmpty() {
    try {
      Optional<DirectoryReader> committed = disk().committed(words.stamp(), state.reader());
      if (committed.isPresent()) {
        return IndexStore.copyOf(committed.get());
      }
    } catch (IOException e) {
      return IndexStore.inMemory();
    }
    return IndexStore.inMemory();
  }

  private PagesToIndex.Difference updateStore(
      IndexStore store, PagesToIndex wanted, FitKeys fitKeys) throws IOException {
    Optional<DirectoryReader> committed = store.committed(words.stamp(), state.reader());
    if (committed.isPresent()) {
      PagesToIndex.Difference difference = wanted.against(committed.get());
      if (difference.isEmpty()) {
        use(committed.get(), fitKeys);
        return difference;
      }
    }
    PagesToIndex.Difference written =
        store.write(
            new IndexWriting(
                wanted,
                words.stamp(),
                words.analysis(),
                new PageNames(words.analysis(), words.stopWords())));
    use(
        store
            .committed(words.stamp(), state.reader())
            .orElseThrow(() -> new IOException("what was written cannot be read back")),
        fitKeys);
    return written;
  }

  private static UpdateReport report(PagesToIndex.Difference written, Optional<String> inMemory) {
    return new UpdateReport(
        written.added().size(), written.changed().size(), written.removed().size(), inMemory);
  }

  private IndexStore disk() throws IOException {
    if (disk.isEmpty()) {
      disk = Optional.of(new IndexStore(place.open(), patience));
    }
    return disk.get();
  }

  /** Answers from now on from this reader, which is taken over unless it is in use already. */
  private void use(DirectoryReader reader, FitKeys fitKeys) throws IOException {
    IndexState old = state;
    if (old.reader().filter(used -> used == reader).isPresent()) {
      reader.incRef();
    }
    state =
        IndexState.of(
            reader,
            new Finder(reader, words.analysis(), words.spellings(), words.stopWords(), fitKeys));
    old.leave();
  }

  /**
   * Answers a query from the last state that this process has seen.
   *
   * @throws IOException when the index is closed, or damaged and cannot be made anew
   */
  public SearchResults find(SearchQuery query) throws IOException {
    try {
      return findNow(query);
    } catch (IOException | RuntimeException e) {
      if (!(e instanceof IOException) && !isOfIndex(e)) {
        throw e;
      }
      if (closed || !makeAnew()) {
        throw unreadable(e);
      }
    }
    try {
      return findNow(query);
    } catch (RuntimeException e) {
      if (!isOfIndex(e)) {
        throw e;
      }
      throw unreadable(e);
    }
  }

  /** Whether the index is what failed, damaged or closed, and not the search itself. */
  private static boolean isOfIndex(Exception e) {
    return Damage.is(e) || e instanceof AlreadyClosedException;
  }

  private static IOException unreadable(Exception e) {
    return new IOException("the search index cannot be read: " + e.getMessage(), e);
  }

  private SearchResults findNow(SearchQuery query) throws IOException {
    while (!closed) {
      IndexState now = state;
      if (now.enter()) {
        try {
          return now.find(query);
        } finally {
          now.leave();
        }
      }
    }
    throw new IOException("the search index is closed");
  }

  /**
   * After damage was met while reading: reads the index against its checksums, or builds it anew.
   */
  private synchronized boolean makeAnew() throws IOException {
    if (library.isEmpty()) {
      return false;
    }
    IndexState old = state;
    state = IndexState.nothing();
    old.leave();
    memory = Optional.empty();
    update(library.get());
    return true;
  }

  @Override
  public synchronized void close() throws IOException {
    if (closed) {
      return;
    }
    closed = true;
    IndexState last = state;
    state = IndexState.nothing();
    last.leave();
    if (memory.isPresent()) {
      memory.get().close();
    }
    if (disk.isPresent()) {
      disk.get().close();
    }
  }
}
