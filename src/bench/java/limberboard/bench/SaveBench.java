package limberboard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuery;
import limberboard.search.SearchResults;
import limberboard.writing.PageText;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;
import limberboard.writing.typing.PageTyping;
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

/**
 * What growing does to a workspace on the disk: opening it, the first search, and a page from being
 * saved to being found, as the window does it. Each is measured one by one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 10)
@Measurement(iterations = 30)
public class SaveBench {
  private static final long SEED = 20_261_130;
  private static final String PAGE = "articles/topics/batteries-on-board.md";

  /** Pages in the workspace; 0: as many as the repository has. */
  @Param({"0", "2000", "20000"})
  public int pages;

  private WorkspaceFolders folders;
  private LibraryReader reader;
  private Library library;
  private SearchIndex index;
  private PageTyping typing;
  private PageFile file;
  private PageText text;
  private int change;

  /** Makes the workspace, reads it and builds its index. */
  @Setup(Level.Trial)
  public void build() throws IOException {
    Path root = Files.createTempDirectory("save-bench").resolve("workspace");
    int made = MadeWorkspace.make(Path.of(""), root, pages, SEED);
    folders = new WorkspaceFolders(root);
    reader = new LibraryReader(folders);
    long start = System.nanoTime();
    library = reader.read();
    double read = (System.nanoTime() - start) / 1e9;
    index = SearchIndex.open(folders);
    start = System.nanoTime();
    index.update(library);
    System.out.printf(
        "%n# %d pages: first read in %.1f s, index built in %.1f s%n",
        made, read, (System.nanoTime() - start) / 1e9);
    file = new PageFile(folders, PAGE);
    text = ((PageFile.Ready) file.open()).page().orElseThrow();
    typing = new PageTyping(reader.typing(PAGE, Kind.TOPIC));
  }

  /** Removes the workspace. */
  @TearDown(Level.Trial)
  public void remove() throws IOException {
    index.close();
    try (Stream<Path> files = Files.walk(folders.root().getParent())) {
      for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }

  private void save(String word) {
    PageText now = new PageText(text.text() + "\nChanged: " + word + ".\n");
    if (!(file.save(Optional.of(text), now) instanceof SaveOutcome.Saved)) {
      throw new IllegalStateException("not saved");
    }
    text = now;
  }

  private SearchResults found(String word) throws IOException {
    SearchResults results = index.find(SearchQuery.of(word));
    if (results.hits().isEmpty()) {
      throw new IllegalStateException(word + " is not found");
    }
    return results;
  }

  /** From saving a page until a word that is new in it finds it. */
  @Benchmark
  public SearchResults saveUntilFound() throws IOException {
    String word = "zubbelword" + ++change;
    save(word);
    PageTyping.Read read = typing.read(text);
    Page<?> page = read.page().orElseThrow();
    index.update(library.with(page, read.library().linksFrom(page.id()), List.of()));
    return found(word);
  }

  /** Reading the workspace again after one page was saved, which the window does after that. */
  @Benchmark
  public Library readAgain() throws IOException {
    save("again" + ++change);
    return reader.read();
  }

  /** The first search of a program just started on a workspace whose index is there. */
  @Benchmark
  public SearchResults firstSearch() throws IOException {
    try (SearchIndex opened = SearchIndex.open(folders)) {
      opened.update(library);
      return opened.find(SearchQuery.of("water in the forward cabin"));
    }
  }
}
