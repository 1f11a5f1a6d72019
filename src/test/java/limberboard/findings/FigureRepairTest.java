package limberboard.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.library.Library;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One step writes a changed figure on all pages that quote it, and touches nothing else. */
class FigureRepairTest {
  private static final String QUOTE = "[24 h](../materials/glue.md#walk-on)";
  @TempDir Path folder;
  private TestWorkspace workspace;
  private Path topic;
  private Path work;

  @BeforeEach
  void makePages() {
    workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/materials/glue.md",
        "---\ntitle: Glue\ngroup: adhesive\nunit: ml\npacks: [{name: tin, holds: 500 ml}]\n"
            + "figures:\n  walk-on: {value: 36 h, source: a handbook}\n"
            + "  sail: {value: 24 h, source: a handbook}\n---\nWalk after [24 h](#walk-on).\n");
    topic =
        workspace.write(
            "articles/topics/a.md",
            "\uFEFF---\r\ntitle: A topic # a remark\r\n---\r\nWait "
                + QUOTE
                + ", not 24 h; sail"
                + " after [24 h](../materials/glue.md#sail) or [36 hours](../materials/glue.md"
                + "#walk-on), `"
                + QUOTE
                + "`.\r\n\r\n[24 N](../materials/glue.md#walk-on)\r\n");
    work =
        workspace.write(
            "articles/procedures/w.md",
            "---\ntitle: Work\nsystem: hull\nwork: mend\nskill: owner\nminutes: 30\n"
                + "look-for: {good: \"Dry after "
                + QUOTE
                + ".\", bad: Wet.}\n---\nText.\n");
  }

  @Test
  void allPagesAreWrittenToTheLetter() throws IOException {
    Library library = workspace.library();
    List<FigureRepair> all = FigureRepair.all(library);
    assertThat(all).hasSize(1);
    assertThat(all.get(0).words())
        .isEqualTo("“36 h” now stands wherever “walk-on” of glue is quoted.");
    String before = Files.readString(topic);
    String header = Files.readString(work);
    assertThat(all.get(0).make(workspace.folders())).isEmpty();
    assertThat(Files.readString(topic)).isEqualTo(before.replace("Wait [24 h]", "Wait [36 h]"));
    assertThat(Files.readString(work)).isEqualTo(header.replace("24 h", "36 h"));
    Library now = workspace.library();
    assertThat(now.problems())
        .extracting(Problem::wrong)
        .containsExactly(
            "says \"24 N\", and glue.md says \"36 h\" at walk-on, which measures something else");
    assertThat(FigureRepair.all(now)).isEmpty();
  }

  @Test
  void aFindingOffersItAndOnlyWhereItIsCertain() {
    Library library = workspace.library();
    List<Boolean> offered =
        library.problems().stream()
            .filter(problem -> problem.file().equals("articles/topics/a.md"))
            .map(problem -> Repair.of(problem, library).isPresent())
            .toList();
    assertThat(offered).containsExactly(true, false);
  }

  @Test
  void aFileThatHasGoneIsLeftOut() throws IOException {
    FigureRepair repair = FigureRepair.all(workspace.library()).get(0);
    Files.delete(topic);
    assertThat(repair.make(workspace.folders())).isEmpty();
    assertThat(topic).doesNotExist();
    assertThat(Files.readString(work)).contains("[36 h]");
  }
}
