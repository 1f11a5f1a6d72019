package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProofreadCommandTest {
  private static final String RENEWAL =
      "---\n"
          + "title: Renew it\n"
          + "system: hull\n"
          + "work: renew\n"
          + "skill: owner\n"
          + "minutes: 9\n"
          + "---\n"
          + "1. Tie it.\n";
  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write("articles/procedures/renewal.md", RENEWAL);
  }

  private Ran run(String... words) {
    return new TerminalRun(folder, LocalDate.of(2026, 5, 1)).run(words);
  }

  @Test
  void sayFileLineRuleAndWhatWouldBeRight() {
    Ran ran = run("proofread", "renewal").ended(ExitCode.PROBLEMS);
    assertThat(ran.out())
        .startsWith("articles/procedures/renewal.md:4: misleads: no-before: before: is a renewal")
        .contains("say under “Before”")
        .contains("1 finding, 0 answered by authors");
  }

  @Test
  void aPageWithoutAFaultEndsWell() {
    assertThat(run("proofread", "flood").ended(ExitCode.OK).out())
        .isEqualTo("0 findings, 0 answered by authors\n");
    assertThat(run("proofread", "renewall").ended(ExitCode.NOT_FOUND).err()).contains("renewal");
  }

  @Test
  void jsonHasTheDocumentedKeys() throws IOException {
    JsonNode read = run("proofread", "--json").json();
    JsonNode first = read.get("findings").get(0);
    String documented = Files.readString(Path.of("docs/terminal.md"));
    first.fieldNames().forEachRemaining(name -> assertThat(documented).contains(name));
    assertThat(first.get("gravity").asText()).isEqualTo("misleads");
    assertThat(read.get("answered").asInt()).isZero();
  }

  @Test
  void aWrongWordOfTheFileIsSaidHereAndByValidate() {
    workspace.write(
        "articles/proofreading.yaml", "cautions:\n  - {words: [petrol], carry: [floood]}\n");
    String said = "articles/proofreading.yaml:2: cautions[1].carry[1]: there is no caution";
    assertThat(run("proofread", "flood").ended(ExitCode.PROBLEMS).err())
        .contains(said, "did you mean \"flood\"?");
    assertThat(run("validate").out()).contains(said);
  }

  @Test
  void whatWasReadIsNotedAndUnreadTells() throws IOException {
    assertThat(run("proofread", "--unread", "renewal").ended(ExitCode.OK).out())
        .contains("never been read in full", "1 page of 1 to be read");
    run("proofread", "--read-by", "a shipwright", "renewal").ended(ExitCode.OK);
    assertThat(run("proofread", "--unread", "renewal").out()).contains("0 pages of 1 to be read");
    assertThat(run("validate").out()).doesNotContain("procedures/renewal.md");
    Path file = folder.resolve("articles/procedures/renewal.md");
    Files.writeString(file, Files.readString(file).replace("Tie it.", "Tie it twice."));
    JsonNode unread = run("proofread", "--unread", "--json", "renewal").json();
    assertThat(unread.get(0).get("readOn").asText()).isEqualTo("2026-05-01");
    assertThat(unread.get(0).get("readBy").asText()).isEqualTo("a shipwright");
  }

  @Test
  void whoReadNothingNotesNothing() {
    assertThat(run("proofread", "--read-by", "a shipwright").ended(ExitCode.USAGE).err())
        .contains("name the pages");
  }
}
