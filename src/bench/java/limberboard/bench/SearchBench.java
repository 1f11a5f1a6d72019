package limberboard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuery;
import limberboard.search.SearchResults;
import limberboard.search.UpdateReport;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** How long search takes: a keystroke, a letter, the update of one page, opening. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx3g")
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class SearchBench {
  private static final String SENTENCE =
      "hi, after the weekend there is water under the front bed and the cushions are soaked";

  /** Pages in the library; 0: the repository's own. */
  @Param({"0", "10000", "100000"})
  public int pages;

  private WorkspaceFolders folders;
  private Library library;
  private SearchIndex index;
  private int keystroke;
  private int change;

  /** Makes the library and its index. */
  @Setup(Level.Trial)
  public void build() throws IOException {
    Path root = Files.createTempDirectory("search-bench");
    folders = new WorkspaceFolders(root);
    Library own = new LibraryReader(new WorkspaceFolders(Path.of(""))).read();
    library = pages == 0 ? own : SyntheticLibrary.of(own, pages);
    Files.createDirectories(folders.words());
    try (Stream<Path> words = Files.list(Path.of("index/words"))) {
      for (Path file : words.toList()) {
        Files.copy(file, folders.words().resolve(file.getFileName()));
      }
    }
    index = SearchIndex.open(folders);
    long start = System.nanoTime();
    index.update(library);
    System.out.printf(
        "%n# built with %d pages in %.1f s, %.1f MB%n",
        library.pages().size(),
        (System.nanoTime() - start) / 1e9,
        megabytes(folders.searchIndex()));
  }

  private static double megabytes(Path folder) throws IOException {
    long bytes = 0;
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        bytes += Files.size(file);
      }
    }
    return bytes / 1e6;
  }

  /** Removes the index. */
  @TearDown(Level.Trial)
  public void remove() throws IOException {
    index.close();
    try (Stream<Path> files = Files.walk(folders.root())) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** One more letter of a sentence being typed; the mean over all its letters. */
  @Benchmark
  public SearchResults keystroke() throws IOException {
    keystroke = keystroke % SENTENCE.length() + 1;
    return index.find(SearchQuery.of(SENTENCE.substring(0, keystroke)).whileTyping());
  }

  /** A short query with a misspelt word. */
  @Benchmark
  public SearchResults misspelt() throws IOException {
    return index.find(SearchQuery.of("hydrualic oil leek"));
  }

  /** A sentence of a letter. */
  @Benchmark
  public SearchResults sentence() throws IOException {
    return index.find(SearchQuery.of(SENTENCE));
  }

  /** One page was changed. */
  @Benchmark
  public UpdateReport updateOfOnePage() throws IOException {
    return index.update(SyntheticLibrary.withChange(library, ++change));
  }

  /** Opening an index that is as the library is, and finding that out. */
  @Benchmark
  public UpdateReport openUnchanged() throws IOException {
    try (SearchIndex opened = SearchIndex.open(folders)) {
      return opened.update(library);
    }
  }
}
