package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WritingCommandsTest {
  private static final String OWN = "limberboard.own";

  @TempDir Path folder;
  private Path yard;
  private TestWorkspace workspace;
  private String own;

  @BeforeEach
  void make() {
    own = System.getProperty(OWN, "");
    System.setProperty(OWN, folder.resolve("own").toString());
    yard = folder.resolve("yard");
    workspace = new TestWorkspace(yard);
    workspace.write("articles/topics/a.md", "---\ntitle: A\n---\n[m](../procedures/mend.md)\n");
  }

  @AfterEach
  void putBack() {
    if (own.isEmpty()) {
      System.clearProperty(OWN);
    } else {
      System.setProperty(OWN, own);
    }
  }

  private Ran run(String... words) {
    return new TerminalRun(yard, LocalDate.of(2026, 4, 1)).run(words);
  }

  @Test
  void newBeginsAPageAndSaysWhatIsMissing() throws IOException {
    Ran ran = run("new", "procedure", "Grease the pivot").ended(ExitCode.OK);
    assertThat(ran.out())
        .contains("Written: articles/procedures/grease-the-pivot.md", "Still to be filled in:")
        .contains("skill: is missing");
    assertThat(yard.resolve("articles/procedures/grease-the-pivot.md")).exists();
    JsonNode json = run("new", "topic", "Ropes", "--id", "all-ropes", "--json").json();
    assertThat(json.get("path").asText()).isEqualTo("articles/topics/all-ropes.md");
    assertThat(json.get("missing")).isEmpty();
    assertThat(run("validate").ended(ExitCode.PROBLEMS).out()).doesNotContain("all-ropes");
  }

  @Test
  void newRefusesWhatIsThereAndWhatIsNone() throws IOException {
    String before = Files.readString(yard.resolve("articles/procedures/mend.md"));
    assertThat(run("new", "topic", "Mend").ended(ExitCode.USAGE).err())
        .contains("\"mend\" already");
    assertThat(run("new", "topc", "X").ended(ExitCode.USAGE).err()).contains("topic");
    assertThat(run("new", "topic", "…").ended(ExitCode.USAGE).err()).contains("--id");
    assertThat(run("new", "topic", "X", "--id", "A b").ended(ExitCode.USAGE).err())
        .contains("no page id");
    assertThat(run("new", "topic", "X", "--outline", "-").ended(ExitCode.USAGE).err())
        .contains("for a symptom");
    assertThat(Files.readString(yard.resolve("articles/procedures/mend.md"))).isEqualTo(before);
  }

  @Test
  void aSymptomIsBegunFromAnOutline() throws IOException {
    String outline =
        "Causes\n- The seal is worn (6, mend)\n- Rain\nChecks\n- Is it salt? (1 minute)\n"
            + "  - how: Taste it.\n  - salt: seal usually, rain never\n  - fresh: ghost\n";
    Ran ran =
        new TerminalRun(yard, LocalDate.of(2026, 4, 1))
            .typing(outline, "new", "symptom", "Wet berth", "--outline", "-");
    assertThat(ran.ended(ExitCode.OK).out())
        .contains("Left out: -:8: warning: \"ghost\" is no cause", "count alike")
        .contains("causes[2].mend: is missing");
    assertThat(Files.readString(yard.resolve("articles/symptoms/wet-berth.md")))
        .contains("title: The seal is worn\n    weight: 6\n    mend: mend\n")
        .contains("salt: {seal-worn: usually, rain: never}");
    assertThat(run("new", "symptom", "X", "--outline", "gone.txt").ended(ExitCode.IO).err())
        .contains("gone.txt");
  }

  @Test
  void renameChangesEveryPlaceAndSaysWhere() throws IOException {
    JsonNode json = run("rename", "mend", "mend-it", "--json").ended(ExitCode.OK).json();
    assertThat(json.get("path").asText()).isEqualTo("articles/procedures/mend-it.md");
    assertThat(json.get("files").get("articles/topics/a.md").asInt()).isEqualTo(1);
    assertThat(run("rename", "mend-it", "mend").ended(ExitCode.OK).out())
        .contains("1 place in 1 file");
    assertThat(run("rename", "mendd", "x").ended(ExitCode.NOT_FOUND).err()).contains("mend");
    assertThat(run("rename", "mend", "No Id").ended(ExitCode.USAGE).err()).contains("no page id");
    assertThat(run("rename", "mend", "flood").ended(ExitCode.USAGE).err())
        .contains("cautions/flood.md");
  }

  @Test
  void aRenamingThatWasCutShortIsGoneOnWithByTheNextCommand() throws IOException {
    workspace.write(".renaming", "kind: procedures\nfrom: mend\nto: mended\n");
    assertThat(run("read", "mended").ended(ExitCode.OK).out()).contains("Mend it");
    assertThat(Files.readString(yard.resolve("articles/topics/a.md"))).contains("mended.md");
  }

  @Test
  void anImportThatWasCutShortIsGoneOnWithByTheNextCommand() throws IOException {
    workspace.write(".import/files/articles/topics/new.md", "---\ntitle: New\n---\n");
    assertThat(run("read", "new").ended(ExitCode.NOT_FOUND).err()).contains("new");
    workspace.write(".import/ready", "articles/topics/new.md\n");
    assertThat(run("read", "new").ended(ExitCode.OK).out()).contains("New");
    assertThat(yard.resolve(".import")).doesNotExist();
  }

  @Test
  void deleteShowsWhatNamesThePageAndKeepsItsText() throws IOException {
    Path page = yard.resolve("articles/procedures/mend.md");
    assertThat(run("delete", "mend").ended(ExitCode.OK).out())
        .contains("1 place name", "articles/topics/a.md:4", "Nothing was deleted");
    assertThat(page).exists();
    JsonNode json = run("delete", "mend", "--yes", "--json").ended(ExitCode.OK).json();
    assertThat(json.get("deleted").asBoolean()).isTrue();
    assertThat(json.get("links").get(0).get("line").asInt()).isEqualTo(4);
    assertThat(page).doesNotExist();
    try (Stream<Path> kept = Files.walk(folder.resolve("own"))) {
      Path file = kept.filter(Files::isRegularFile).findFirst().orElseThrow();
      assertThat(Files.readString(file)).contains("title: Mend it");
    }
    assertThat(run("delete", "nobody").ended(ExitCode.NOT_FOUND).err()).contains("nobody");
  }
}
