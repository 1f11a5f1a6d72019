package limberboard.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** Runs the git command, the reference that the program's own work with repositories is held to. */
public record GitRun(Path folder) {

  /** What git said. */
  public record Said(int code, String out) {
    /** The same, of a command that must have worked. */
    public String good() {
      assertThat(code).as(out).isZero();
      return out.strip();
    }
  }

  /** Passes a test over, and says so, on a machine without git. */
  public GitRun {
    Assumptions.assumeTrue(isThere(), "git is not installed here: not compared with it");
  }

  private static boolean isThere() {
    try {
      return new ProcessBuilder("git", "--version").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static void endAfterAMinute(Process process) {
    try {
      if (!process.waitFor(60, TimeUnit.SECONDS)) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Runs {@code git WORDS} in the folder, apart from the settings of whoever runs the tests. */
  public Said run(String... words) {
    try {
      List<String> command = new ArrayList<>(List.of("git"));
      command.addAll(List.of("-c", "user.name=Tess", "-c", "user.email=tess@example.org"));
      command.addAll(List.of(words));
      ProcessBuilder builder =
          new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
      builder
          .environment()
          .putAll(
              Map.of(
                  "GIT_CONFIG_GLOBAL", "/dev/null",
                  "GIT_CONFIG_NOSYSTEM", "1",
                  "GIT_TERMINAL_PROMPT", "0"));
      Process process = builder.start();
      process.getOutputStream().close();
      Thread watch = new Thread(() -> endAfterAMinute(process), "watches git");
      watch.setDaemon(true);
      watch.start();
      String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).as(String.join(" ", command)).isTrue();
      return new Said(process.exitValue(), out);
    } catch (IOException e) {
      throw new AssertionError(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }
}
