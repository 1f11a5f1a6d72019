package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LibraryWatchTest {
  @TempDir Path folder;

  @Test
  void callsAfterAChange() throws IOException, InterruptedException {
    TestWorkspace workspace = new TestWorkspace(folder);
    Semaphore calls = new Semaphore(0);
    try (LibraryWatch watch =
        LibraryWatch.start(workspace.folders(), Duration.ofMillis(50), calls::release)) {
      boolean called = false;
      for (int attempt = 0; attempt < 50 && !called; attempt++) {
        workspace.write("articles/topics/a.md", "---\ntitle: Number " + attempt + "\n---\n");
        called = calls.tryAcquire(200, TimeUnit.MILLISECONDS);
      }
      assertThat(called).as("called after a change").isTrue();
      assertThat(watch).isNotNull();
    }
  }
}
