package limberboard.library.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.TestWorkspace;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeyLinesTest {
  private static final String PAGE =
      """
      ---
      title: Wet
      zones: [cabin]
      causes:
        - {id: seal, title: The seal leaks, weight: 3, mend: mend}
        - id: rain
          title: Rain comes in
          weight: 3
          mend: mend
      checks:
        - {id: look, ask: Wet, how: Look., minutes: 1, answers: [yes, no], finds: {yes: {seal: always}}}
      ---
      """;

  @TempDir Path folder;

  @Test
  void findsTheLineOfAKeyOrOfTheNearestAboveIt() {
    KeyLines lines = lines();
    assertThat(lines.warning("/causes/1/mend", "is odd", "mend it"))
        .isEqualTo(
            Problem.warning("articles/symptoms/wet.md", 9, "causes[2].mend", "is odd", "mend it"));
    assertThat(lines.warning("/causes/1", "", "").line()).isEqualTo(6);
    assertThat(lines.warning("/causes/1/cures", "", "").line()).isEqualTo(6);
    assertThat(lines.warning("/nothing/such", "", "").line()).isEqualTo(2);
  }

  @Test
  void adviceIsAProblemOfAnotherSeverity() {
    assertThat(lines().warning("/checks/0", "is odd", "mend it").asAdvice())
        .hasToString("articles/symptoms/wet.md:11: advice: checks[1]: is odd; mend it");
  }

  @Test
  void aFileThatHasGoneHasOnlyAFirstLine() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    Path file = workspace.write("articles/symptoms/wet.md", PAGE);
    Page<Symptom> page = workspace.library().symptom("wet").orElseThrow();
    Files.delete(file);
    assertThat(KeyLines.of(workspace.folders(), page).warning("/causes/1", "", "").line())
        .isEqualTo(1);
  }

  private KeyLines lines() {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write("articles/symptoms/wet.md", PAGE);
    return KeyLines.of(workspace.folders(), workspace.library().symptom("wet").orElseThrow());
  }
}
