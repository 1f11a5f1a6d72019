package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.SpecExamples;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs {@code conditions.spec.md}: every example is a test named after its section and number. */
class ConditionSpecTest {
  private static final String DAY = "2026-04-01";
  private final SpecExamples.Spec spec = SpecExamples.read("/limberboard/boat/conditions.spec.md");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> examples() {
    return spec.examples().stream()
        .map(example -> DynamicTest.dynamicTest(example.name(), () -> run(example)));
  }

  private void run(SpecExamples.Example example) throws IOException {
    TestWorkspace workspace = new TestWorkspace(Files.createTempDirectory(folder, "example"));
    workspace.write("articles/models/other-30.md", otherModel());
    workspace.write(
        "articles/topics/asked.md",
        "---\ntitle: Asked\nfits:\n" + example.text("condition").orElseThrow().indent(2) + "---\n");
    workspace.write("boats/knot/boat.yaml", boat(example));
    Workspace read = new WorkspaceReader(workspace.folders()).read();
    assertThat(read.problems()).isEmpty();
    LocalDate on = LocalDate.parse(example.text("on").orElse(DAY).strip());
    Fit fit =
        new Fitting(read.boat("knot").orElseThrow(), on)
            .judge(read.library().page("asked").orElseThrow().head().fits());
    assertThat(
            new Fitting(read.boat("knot").orElseThrow(), on)
                .fits(read.library().page("asked").orElseThrow().head().fits()))
        .isEqualTo(fit.fits());
    assertThat(said(fit)).isEqualTo(example.text("expect").orElseThrow().strip());
  }

  private static String said(Fit fit) {
    return (fit.fits() ? "fits" : "no") + (fit.reason().isEmpty() ? "" : ": " + fit.reason());
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

  private static String otherModel() {
    return """
        ---
        title: Other 30
        built: 2010/..
        drawing: {profile: ../pictures/side.svg, deck: ../pictures/top.svg}
        zones: [{id: cabin, title: Cabin, profile: "0,0 1,0 1,1"}]
        equipment: []
        ---
        """;
  }
}
