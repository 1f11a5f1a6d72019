package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that another program is writing. */
class WriteLockTest {
  @TempDir Path folder;

  /** The other program: takes the lock, says so, and holds it until it may read a letter. */
  public static void main(String[] args) throws IOException {
    WriteLock lock = WriteLock.take(Path.of(args[0]), Duration.ofSeconds(10));
    System.out.println("held");
    System.in.read();
    lock.release();
  }

  @Test
  void whileAnotherProgramHoldsItThatIsSaidAndItGoesOnAfterwards() throws Exception {
    Path file = Files.writeString(folder.resolve("log.csv"), "as it was");
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                WriteLockTest.class.getName(),
                file.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try {
      assertThat(other.inputReader().readLine()).isEqualTo("held");
      assertThatThrownBy(() -> WriteLock.take(file, Duration.ofMillis(200)))
          .isInstanceOfSatisfying(
              IOException.class,
              trouble ->
                  assertThat(FileTrouble.notWritten("log.csv", trouble).toString())
                      .contains("another program all the time", "try again"));
      assertThat(file).hasContent("as it was");
    } finally {
      other.getOutputStream().close();
      other.waitFor();
    }
    WriteLock.take(file, Duration.ofMillis(200)).release();
    assertThat(folder.resolve(".log.csv.lock")).doesNotExist();
  }
}
