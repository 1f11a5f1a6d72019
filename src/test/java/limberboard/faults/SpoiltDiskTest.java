package limberboard.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import limberboard.library.file.FileTrouble;
import limberboard.library.problem.PlainTrouble;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A disk that is full or may only be read while pages are saved, kept, renamed, imported, recorded,
 * pulled and indexed: what a person is told, that nothing is lost, and that the same work comes to
 * its end once the disk is sound again.
 */
class SpoiltDiskTest {
  private static final String SPOILT =
      "(?s).*(disk is full|[Nn]o space left|[Ff]ile too large|[Rr]ead-only|may not be written"
          + "|no permission).*";

  @TempDir Path folder;

  /** The program that meets the spoilt disk: does each work and says what came of it. */
  public static void main(String[] args) {
    TriedWorks.all()
        .forEach(
            (name, work) -> {
              String told = told(work, Path.of(args[0], name));
              System.out.println(name + ": " + told.replaceAll("\\s+", " "));
            });
  }

  private static String told(TriedWork work, Path workspace) {
    try {
      return work.attempt(workspace);
    } catch (PlainTrouble trouble) {
      return trouble.wrong() + "; " + trouble.right();
    } catch (IOException trouble) {
      return FileTrouble.reason(trouble);
    } catch (RuntimeException e) {
      return "NOT FORESEEN " + e + Arrays.toString(e.getStackTrace());
    }
  }

  @ParameterizedTest
  @EnumSource
  void isToldLosesNothingAndIsGoneOnWith(SpoiltDisk spoilt) throws Exception {
    Path disk = Files.createDirectories(folder.resolve("disk"));
    Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    for (Map.Entry<String, TriedWork> each : TriedWorks.all().entrySet()) {
      each.getValue().prepare(disk.resolve(each.getKey()), elsewhere);
    }
    Map<String, String> told = run(spoilt, disk);
    Assumptions.assumeFalse(told.isEmpty(), "this machine lets nobody make such a disk");
    assertThat(told.keySet()).isEqualTo(TriedWorks.all().keySet());
    for (Map.Entry<String, TriedWork> each : TriedWorks.all().entrySet()) {
      String said = told.get(each.getKey());
      assertThat(said).as(each.getKey()).matches(SPOILT);
      Path workspace = disk.resolve(each.getKey());
      assertThat(each.getValue().isAsBefore(workspace)).as(each.getKey() + ": " + said).isTrue();
      assertThat(told(each.getValue(), workspace)).as(each.getKey()).isEqualTo(TriedWork.DONE);
      assertThat(each.getValue().isDone(workspace)).as(each.getKey() + " later").isTrue();
    }
  }

  private Map<String, String> run(SpoiltDisk spoilt, Path disk) throws Exception {
    Path out = folder.resolve("out.txt");
    List<String> command = new ArrayList<>(spoilt.shell());
    command.addAll(List.of("-c", spoilt.script(), "sh"));
    command.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:-UsePerfData",
            "-cp",
            System.getProperty("java.class.path"),
            SpoiltDiskTest.class.getName(),
            disk.toString()));
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile());
    builder.environment().put("DISK", disk.toString());
    builder.environment().put("XDG_CONFIG_HOME", folder.toString());
    builder.start().waitFor();
    Map<String, String> told = new TreeMap<>();
    for (String line : Files.readAllLines(out)) {
      int colon = line.indexOf(": ");
      if (colon > 0 && TriedWorks.all().containsKey(line.substring(0, colon))) {
        told.put(line.substring(0, colon), line.substring(colon + 2));
      }
    }
    return told;
  }
}
