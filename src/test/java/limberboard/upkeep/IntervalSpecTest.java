package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.SpecExamples;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs {@code intervals.spec.md}: every example is a test named after its section and number. */
class IntervalSpecTest {
  private static final String DAY = "2026-03-15";
  private static final int COLUMNS = 6;
  private final SpecExamples.Spec spec = SpecExamples.read("/limberboard/upkeep/intervals.spec.md");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> examples() {
    return spec.examples().stream()
        .map(example -> DynamicTest.dynamicTest(example.name(), () -> run(example)));
  }

  private void run(SpecExamples.Example example) throws IOException {
    TestWorkspace files = new TestWorkspace(Files.createTempDirectory(folder, "example"));
    files.write("articles/procedures/launch-checks.md", procedure("launch-checks", ""));
    example
        .text("interval")
        .ifPresent(
            interval ->
                files.write(
                    "articles/procedures/job.md",
                    procedure("job", "interval:\n" + interval.indent(2))));
    example.blocks().stream()
        .filter(block -> block.word().equals("page"))
        .forEach(
            block ->
                files.write(
                    "articles/procedures/" + block.rest() + ".md",
                    procedure(block.rest(), block.text())));
    files.write("boats/knot/boat.yaml", boat(example));
    files.write("boats/knot/log.csv", log(example.text("log").orElse("")));
    Workspace read = new WorkspaceReader(files.folders()).read();
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    LocalDate on = LocalDate.parse(example.text("on").orElse(DAY).strip());
    Upkeep upkeep = Upkeep.of(read.library(), new Fitting(read.boat("knot").orElseThrow(), on));
    assertThat(said(upkeep.all())).isEqualTo(example.text("expect").orElseThrow().strip());
  }

  private static String said(List<Due> all) {
    return all.stream()
        .sorted(Comparator.comparing(Due::id))
        .map(
            due ->
                due.id()
                    + " "
                    + due.runsOut().map(LocalDate::toString).orElse("?")
                    + " "
                    + due.group().name().toLowerCase(Locale.ROOT).replace('_', '-')
                    + ": "
                    + due.why().said())
        .collect(Collectors.joining("\n"));
  }

  private static String procedure(String title, String keys) {
    return "---\ntitle: "
        + title
        + "\nsystem: deck\nwork: service\nskill: owner\nminutes: 10\n"
        + keys.stripTrailing()
        + "\n---\n1. Do it.\n";
  }

  /** The log's lines, each filled up to all columns. */
  private static String log(String lines) {
    return "date,work,engine-hours,note,hoists,of\n"
        + lines
            .lines()
            .map(line -> line + ",".repeat(COLUMNS - line.split(",", -1).length))
            .collect(Collectors.joining("\n"))
        + "\n";
  }

  /** The first section's boat with the example's keys put over it. */
  private String boat(SpecExamples.Example example) {
    Map<String, String> keys = new LinkedHashMap<>();
    Stream.of(spec.common().get(0).text(), example.text("boat").orElse(""))
        .flatMap(String::lines)
        .map(line -> line.split(": ", 2))
        .forEach(parts -> keys.put(parts[0], parts[1]));
    return keys.entrySet().stream()
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .collect(Collectors.joining("\n"));
  }
}
