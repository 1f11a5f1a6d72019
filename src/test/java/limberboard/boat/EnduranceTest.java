package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small run of {@link Endurance}; {@code docs/writing.md} tells how to make a large one. */
class EnduranceTest {
  @TempDir Path folder;

  @Test
  void twoProgramsThatWriteAtOnceLoseNothing() throws IOException, InterruptedException {
    Endurance endurance = new Endurance(folder);
    assertThat(endurance.writers(40)).hasSize(2);
    assertThat(endurance.wrong()).isEmpty();
  }

  @Test
  void programsThatAreKilledLoseNothingTheyAcknowledged() throws IOException, InterruptedException {
    Endurance endurance = new Endurance(folder);
    assertThat(endurance.kills(6, 20261128)).hasSize(3);
    assertThat(endurance.wrong()).isEmpty();
  }
}
