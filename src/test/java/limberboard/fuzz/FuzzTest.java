package limberboard.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Spoilt files through the commands, some in every run of the tests; {@code mvn test
 * -Dtest=FuzzTest -Dfuzz.rounds=800 -Dfuzz.seed=1} spoils thousands, see {@code
 * docs/robustness.md}.
 */
class FuzzTest {
  private static final int USUAL_ROUNDS = 12;
  private static final Duration HANGS = Duration.ofSeconds(Integer.getInteger("fuzz.hangs", 120));

  @TempDir Path folder;

  @Test
  void aSpoiltFileStopsNothingElse() throws IOException {
    int rounds = Integer.getInteger("fuzz.rounds", USUAL_ROUNDS);
    long seed = Long.getLong("fuzz.seed", 1);
    long start = System.nanoTime();
    Watched watched = new Watched(folder, HANGS);
    Fuzz fuzz = new Fuzz(new FuzzWorkspace(folder, Path.of("")), watched);
    for (int i = 0; i < rounds; i++) {
      int before = fuzz.findings().size();
      fuzz.round(seed + i);
      fuzz.findings().stream().skip(before).forEach(System.out::println);
    }
    if (rounds > USUAL_ROUNDS) {
      System.out.printf(
          "%d files spoilt, %d commands, %d seconds, the slowest command %d seconds, %d findings%n",
          fuzz.files(),
          fuzz.commands(),
          Duration.ofNanos(System.nanoTime() - start).toSeconds(),
          watched.slowest(),
          fuzz.findings().size());
    }
    assertThat(fuzz.files()).isGreaterThanOrEqualTo(rounds);
    assertThat(fuzz.findings()).isEmpty();
  }
}
