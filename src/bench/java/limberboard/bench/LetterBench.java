package limberboard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import limberboard.boat.WorkspaceReader;
import limberboard.letters.recognise.Recogniser;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.RecordedLetter;
import limberboard.letters.recognise.Teaching;
import limberboard.library.file.WorkspaceFolders;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How many of the demo's letters are recognised in a second, with the library's symptoms and with
 * these copied under other ids, so that every word speaks for many: the dearest case there is.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class LetterBench {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 29);

  /** Symptoms; 0 for those of the library. */
  @Param({"0", "1000"})
  public int symptoms;

  private Recogniser recogniser;
  private List<RecordedLetter> letters;
  private int next;

  /** Copies the workspace and learns from its letters. */
  @Setup
  public void learn() throws IOException {
    Path demo = Path.of("").toAbsolutePath();
    Path copy = Files.createTempDirectory("letters");
    for (String folder : List.of("articles", "index", "demo-boats")) {
      copy(demo.resolve(folder), copy.resolve(folder));
    }
    multiply(copy.resolve("articles/symptoms"));
    WorkspaceFolders folders = new WorkspaceFolders(copy);
    letters = RecordedLetter.read(folders.letters());
    recogniser = new Teaching(folders, new WorkspaceReader(folders).read(), TODAY).recogniser();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file));
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  private void multiply(Path folder) throws IOException {
    List<Path> pages;
    try (Stream<Path> files = Files.list(folder)) {
      pages = files.sorted().toList();
    }
    for (int i = pages.size(); i < symptoms; i++) {
      String name = pages.get(i % pages.size()).getFileName().toString();
      Files.copy(folder.resolve(name), folder.resolve(name.replace(".md", "-" + i + ".md")));
    }
  }

  /** One letter after the other. */
  @Benchmark
  public Recognition recognise() {
    next = (next + 1) % letters.size();
    return recogniser.recognise(letters.get(next).letter());
  }
}
