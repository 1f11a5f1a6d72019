package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One change, one call: nothing is tried again here, so a change that is missed fails the test. */
class LibraryWatchTest {
  /** Long enough that only what the system tells can lead to a call. */
  private static final Duration NEVER = Duration.ofHours(1);

  @TempDir Path folder;
  private final Semaphore calls = new Semaphore(0);
  private TestWorkspace workspace;

  @BeforeEach
  void workspace() {
    workspace = new TestWorkspace(folder);
  }

  private LibraryWatch watch(Duration look) throws IOException {
    return LibraryWatch.start(workspace.folders(), Duration.ofMillis(50), look, calls::release);
  }

  private void assertCalled(String when) throws InterruptedException {
    assertThat(calls.tryAcquire(20, TimeUnit.SECONDS)).as("called after " + when).isTrue();
  }

  @Test
  void aChangeRightAfterTheStartIsCalledFor() throws IOException, InterruptedException {
    try (LibraryWatch watch = watch(NEVER)) {
      workspace.write("articles/topics/new.md", "---\ntitle: New\n---\n");
      assertCalled("a change right after the start");
      assertThat(watch).isNotNull();
    }
  }

  @Test
  void aFolderMadeLaterIsWatched() throws IOException, InterruptedException {
    try (LibraryWatch watch = watch(NEVER)) {
      workspace.write("boats/dunlin/boat.yaml", "name: Dunlin\n");
      assertCalled("the first boat of a workspace");
      watch.reading();
      Path log = workspace.write("boats/dunlin/log.csv", "date,event\n");
      assertCalled("a file in a folder made later");
      watch.reading();
      Files.delete(log);
      assertCalled("a file that goes");
    }
  }

  @Test
  void aFolderThatGoesAndComesAgainIsWatched() throws IOException, InterruptedException {
    workspace.write("boats/dunlin/boat.yaml", "name: Dunlin\n");
    try (LibraryWatch watch = watch(NEVER)) {
      try (Stream<Path> files = Files.walk(workspace.folders().boats())) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
      assertCalled("a folder that goes");
      watch.reading();
      workspace.write("boats/dunlin/boat.yaml", "name: Sanderling\n");
      assertCalled("a folder that comes again");
    }
  }

  @Test
  void whatTheSystemDoesNotTellIsSeenByLooking() throws IOException, InterruptedException {
    Path elsewhere = Files.writeString(folder.resolve(".elsewhere"), "---\ntitle: One\n---\n");
    Files.createSymbolicLink(
        workspace.folders().articles().resolve("cautions/linked.md"), elsewhere);
    try (LibraryWatch watch = watch(Duration.ofMillis(200))) {
      Files.writeString(elsewhere, "---\ntitle: Two\n---\n");
      assertCalled("a change of what a link stands for");
      assertThat(watch).isNotNull();
    }
  }
}
