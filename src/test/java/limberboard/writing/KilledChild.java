package limberboard.writing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A {@link KilledWriter} in a program of its own. */
final class KilledChild {
  private final Process process;
  private final Path said;
  private final Path stop;

  KilledChild(Path folder, long seed, String option) throws IOException {
    stop = folder.resolve("stop");
    said = Files.createTempFile(folder, "said", ".out");
    process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                option,
                "-Xlog:disable",
                "-cp",
                System.getProperty("java.class.path"),
                KilledWriter.class.getName(),
                folder.toString(),
                Long.toString(seed))
            .redirectOutput(said.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
  }

  void ready() throws IOException, InterruptedException {
    while (process.isAlive() && Files.size(said) == 0) {
      TimeUnit.MILLISECONDS.sleep(2);
    }
  }

  /** Lets it come to an end by itself. */
  void end() throws IOException, InterruptedException {
    Files.writeString(stop, "");
    process.waitFor();
    Files.delete(stop);
    Files.delete(said);
  }

  /** Kills it; a last word that was cut short does not count. */
  List<String> killedAfter(int milliseconds) throws IOException, InterruptedException {
    TimeUnit.MILLISECONDS.sleep(milliseconds);
    if (!process.isAlive()) {
      return List.of("the program ended by itself");
    }
    process.destroyForcibly().waitFor();
    String text = Files.readString(said, StandardCharsets.UTF_8);
    Files.delete(said);
    return text.substring(0, text.lastIndexOf('\n') + 1)
        .lines()
        .filter(line -> !line.equals("ready"))
        .toList();
  }
}
