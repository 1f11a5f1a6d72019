package limberboard.search;

import static limberboard.search.SmallSearchWorkspace.ids;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed while it writes leaves the last committed index, and no lock. */
class KilledWriterTest {
  private static final int KILLS = 4;

  @TempDir Path folder;

  @Test
  void whatWasCommittedSurvivesTheWriter() throws Exception {
    SmallSearchWorkspace workspace = SmallSearchWorkspace.filled(folder);
    workspace.index().close();
    Random random = new Random(17);
    for (int kill = 0; kill < KILLS; kill++) {
      int reached = writeUntilKilled(20 + random.nextInt(60), random.nextInt(15));
      try (SearchIndex index = SearchIndex.open(workspace.folders())) {
        assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
        int committed = committedRound(index, reached);
        assertThat(committed).as("no round is lost or half there").isBetween(reached, reached + 1);
        assertThat(index.update(workspace.library()).inMemory()).isEmpty();
        assertThat(ids(index, "loop")).doesNotContain("loop-0");
      }
    }
  }

  /** The round that all pages of the loop say they are of. */
  private static int committedRound(SearchIndex index, int reached) throws IOException {
    for (int round = reached; round <= reached + 1; round++) {
      if (ids(index, "r" + round + "r").size() == WriterProcess.PAGES) {
        return round;
      }
    }
    return -1;
  }

  /** Runs a writer until it has told of so many commits and some milliseconds more. */
  private int writeUntilKilled(int commits, int millis) throws Exception {
    Path told = folder.resolve("told.txt");
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path", "") + File.pathSeparator + testClasses(),
                WriterProcess.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .redirectOutput(told.toFile())
            .start();
    try {
      while (writer.isAlive() && lastRound(told) < commits) {
        Thread.sleep(5);
      }
      Thread.sleep(millis);
    } finally {
      writer.destroyForcibly();
    }
    assertThat(writer.waitFor()).as("it was killed").isNotZero();
    assertThat(lastRound(told)).isGreaterThanOrEqualTo(commits);
    return lastRound(told);
  }

  /** The last commit that a writer told of, or -1; an unfinished line does not count. */
  private static int lastRound(Path told) throws IOException {
    String text = Files.readString(told);
    String[] lines = text.substring(0, text.lastIndexOf('\n') + 1).split("\n");
    return lines[0].isEmpty() ? -1 : Integer.parseInt(lines[lines.length - 1].strip());
  }

  private static String testClasses() throws Exception {
    return Path.of(WriterProcess.class.getProtectionDomain().getCodeSource().getLocation().toURI())
        .toString();
  }
}
