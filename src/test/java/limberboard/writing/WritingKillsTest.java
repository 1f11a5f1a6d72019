package limberboard.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small run of {@link WritingKills}; {@code docs/writing.md} tells how to make a large one. */
class WritingKillsTest {
  @TempDir Path folder;

  @Test
  void programsThatAreKilledLoseNoPage() throws IOException, InterruptedException {
    WritingKills kills = new WritingKills(folder, 20261129);
    assertThat(kills.run(25, line -> {}).get(0)).startsWith("25 programs killed");
    assertThat(kills.wrong()).isEmpty();
  }
}
