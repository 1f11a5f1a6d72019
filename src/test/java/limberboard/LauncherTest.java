package limberboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher and the whole program as processes of their own, in locales without umlauts. */
class LauncherTest {
  private static final Path SCRIPT = Path.of("src/main/bin/limberboard").toAbsolutePath();

  @TempDir Path folder;
  private Path program;
  private Path workspace;

  private record Ran(int code, String out, String err) {}

  @BeforeEach
  void makeProgram() throws IOException {
    Assumptions.assumeTrue(
        Files.isExecutable(Path.of("/bin/sh")), "There is no shell here, so no launcher either.");
    program = Files.createDirectories(folder.resolve("program/bin")).resolve("limberboard");
    String own = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String script = Files.readString(SCRIPT);
    assertThat(script).contains("\"$here/lib/*\"").contains("exec \"$java\"");
    Files.writeString(
        program,
        script
            .replace("\"$here/lib/*\"", "'" + classPath() + "'")
            .replace("exec \"$java\"", "exec '" + own + "'"));
    workspace = folder.resolve("workspace");
    TestWorkspace made = new TestWorkspace(workspace);
    made.write("boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
    made.write(
        "articles/procedures/job.md",
        "---\n"
            + "title: The job\n"
            + "system: deck\n"
            + "work: service\n"
            + "skill: owner\n"
            + "minutes: 10\n"
            + "---\n"
            + "Do it.\n");
  }

  /** The test's own class path, for a process in another folder. */
  private static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(entry -> Path.of(entry).toAbsolutePath().toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  private Ran run(Map<String, String> locale, String... words) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            Stream.concat(Stream.of("/bin/sh", program.toString()), Stream.of(words)).toList());
    builder.directory(workspace.toFile());
    builder.environment().keySet().removeIf(name -> name.startsWith("LC_") || name.equals("LANG"));
    builder.environment().remove("JAVA_HOME");
    builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
    builder.environment().putAll(locale);
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    builder.redirectOutput(out.toFile()).redirectError(err.toFile());
    Process process = builder.start();
    process.getOutputStream().close();
    int code = process.waitFor();
    return new Ran(
        code,
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  @Test
  void umlautsSurviveWhereTheLocaleKnowsNone() throws Exception {
    for (Map<String, String> locale : List.of(Map.of("LC_ALL", "C"), Map.<String, String>of())) {
      Files.deleteIfExists(workspace.resolve("boats/knot/log.csv"));
      Ran done =
          run(locale, "done", "job", "--boat", "knot", "--on", "2026-03-01", "--note", "größe ½");
      assertThat(done.code()).as(done.err()).isZero();
      assertThat(Files.readString(workspace.resolve("boats/knot/log.csv"))).contains("größe ½");
    }
  }

  @Test
  void fileNamesWithUmlautsAreWritten() throws Exception {
    Ran csv = run(Map.of("LC_ALL", "C"), "due", "--csv", "fällig.csv");
    assertThat(csv.code()).as(csv.err()).isZero();
    assertThat(csv.err()).contains("fällig.csv");
    assertThat(workspace.toFile().list()).contains("fällig.csv");
  }
}
