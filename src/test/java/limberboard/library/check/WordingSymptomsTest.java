package limberboard.library.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds what is said of words for letters that name symptoms which are always urgent. */
class WordingSymptomsTest {
  @TempDir private Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
  }

  private String only(String header) {
    workspace.write("articles/wordings/gas.md", "---\ntitle: Gas\n" + header + "---\nGo ashore.\n");
    return workspace.library().problems().stream()
        .map(Problem::toString)
        .filter(problem -> problem.contains("gas.md"))
        .reduce((one, other) -> one + "\n" + other)
        .orElse("");
  }

  @Test
  void aSymptomThatIsNotThereIsSaid() {
    assertThat(only("for: urgent\nwhen: [gas can be smelt]\nsymptoms: [smell-of-gaz]\n"))
        .contains("articles/wordings/gas.md:5")
        .contains("smell-of-gaz");
  }

  @Test
  void symptomsGoWithADangerOnly() {
    assertThat(only("for: greeting\nsymptoms: []\n")).isEmpty();
    assertThat(only("for: urgent\nsymptoms: [smell-of-gas]\n"))
        .contains("does not say what is dangerous");
  }
}
