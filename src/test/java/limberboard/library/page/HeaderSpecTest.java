package limberboard.library.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.SpecExamples;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs {@code headers.spec.md}: every example is a test named after its section and number. */
class HeaderSpecTest {
  private final SpecExamples.Spec spec = SpecExamples.read("/limberboard/library/headers.spec.md");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> examples() {
    return spec.examples().stream()
        .map(example -> DynamicTest.dynamicTest(example.name(), () -> run(example)));
  }

  @Test
  void theLibraryAroundTheExamplesIsWhole() {
    assertThat(new TestWorkspace(folder).library().problems()).isEmpty();
  }

  private void run(SpecExamples.Example example) throws IOException {
    TestWorkspace workspace = new TestWorkspace(Files.createTempDirectory(folder, "example"));
    List<SpecExamples.Block> pages =
        example.blocks().stream().filter(block -> block.word().equals("page")).toList();
    pages.forEach(page -> workspace.write("articles/" + page.rest(), page.text()));
    Set<String> files =
        pages.stream().map(page -> "articles/" + page.rest()).collect(Collectors.toSet());
    String said =
        workspace.library().problems().stream()
            .filter(problem -> files.contains(problem.file()))
            .map(HeaderSpecTest::line)
            .collect(Collectors.joining("\n"));
    assertThat(said.isEmpty() ? "nothing" : said)
        .isEqualTo(example.text("expect").orElseThrow().strip());
  }

  private static String line(Problem problem) {
    String whole = problem.toString().substring(problem.file().length());
    return problem.line() > 0 ? whole.substring(1) : "0" + whole;
  }
}
