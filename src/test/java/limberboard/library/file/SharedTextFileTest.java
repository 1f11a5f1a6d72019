package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import limberboard.library.file.SharedTextFile.Edit;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedTextFileTest {
  @TempDir Path folder;
  private Path file;
  private SharedTextFile kept;

  @BeforeEach
  void prepare() throws IOException {
    Files.createDirectories(folder.resolve("work"));
    file = folder.resolve("work/file.txt");
    kept = new SharedTextFile(new WorkspaceFolders(folder.resolve("work")), file, 1_000);
  }

  /** Adds a letter; answers why not, or nothing. */
  private static final class Add implements Edit<Optional<Problem>> {
    @Override
    public Rewrite<Optional<Problem>> apply(Optional<String> now) {
      return Rewrite.write(Optional.of(now.orElse("") + "x"), Optional.empty());
    }

    @Override
    public Optional<Problem> refused(Problem problem) {
      return Optional.of(problem);
    }
  }

  @Test
  void whatManyWriteAtOnceIsAllThereAndNothingElseIsLeft() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Callable<Optional<Problem>>> all =
          IntStream.range(0, 200)
              .<Callable<Optional<Problem>>>mapToObj(i -> () -> kept.change(new Add()))
              .toList();
      for (Future<Optional<Problem>> each : threads.invokeAll(all)) {
        assertThat(each.get()).isEmpty();
      }
    } catch (ExecutionException e) {
      throw new AssertionError(e.getCause());
    } finally {
      threads.shutdown();
    }
    assertThat(file).hasContent("x".repeat(200));
    assertThat(names()).containsExactly("file.txt");
  }

  @Test
  void whatAKilledRunLeftIsClearedAwayAndHoldsNobodyUp() throws IOException {
    Files.writeString(folder.resolve("work/.file.txt-123456.tmp"), "half");
    Files.writeString(folder.resolve("work/.file.txt.lock"), "left");
    Files.writeString(folder.resolve("work/.other.txt-123456.tmp"), "another's");
    assertThat(kept.change(new Add())).isEmpty();
    assertThat(names()).containsExactlyInAnyOrder("file.txt", ".other.txt-123456.tmp");
  }

  @Test
  void aFileThatCannotBeReadIsNotOverwritten() throws IOException {
    byte[] latin = {(byte) 0xFC, 'x'};
    Files.write(file, latin);
    assertThat(kept.change(new Add()).orElseThrow().wrong()).contains("not UTF-8");
    assertThat(Files.readAllBytes(file)).isEqualTo(latin);
    Files.write(file, new byte[1_001]);
    assertThat(kept.change(new Add()).orElseThrow().wrong()).contains("1001 bytes");
    assertThat(Files.size(file)).isEqualTo(1_001);
  }

  @Test
  void aLinkOutOfTheWorkspaceIsNotFollowedAndOneWithinItIs() throws IOException {
    Path outside = Files.writeString(folder.resolve("outside.txt"), "secret");
    Files.createSymbolicLink(file, outside);
    assertThat(kept.change(new Add()).orElseThrow().wrong()).contains("out of the workspace");
    assertThat(outside).hasContent("secret");
    Files.delete(file);
    Path inside = Files.writeString(folder.resolve("work/inside.txt"), "y");
    Files.createSymbolicLink(file, inside);
    assertThat(kept.change(new Add())).isEmpty();
    assertThat(inside).hasContent("yx");
    assertThat(file).isSymbolicLink();
  }

  @Test
  void aLinkToNothingIsSaidAndNothingIsMade() throws IOException {
    Files.createSymbolicLink(file, folder.resolve("work/away.txt"));
    assertThat(kept.change(new Add()).orElseThrow().wrong()).contains("leads to nothing");
    assertThat(folder.resolve("work/away.txt")).doesNotExist();
  }

  @Test
  void withoutItsFolderTheReasonIsSaid() {
    SharedTextFile gone =
        new SharedTextFile(new WorkspaceFolders(folder), folder.resolve("no/such/file"), 1_000);
    assertThat(gone.change(new Add()).orElseThrow().wrong()).contains("folder is not there");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("work"))) {
      return files.map(each -> each.getFileName().toString()).toList();
    }
  }
}
