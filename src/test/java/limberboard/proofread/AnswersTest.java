package limberboard.proofread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.proofread.file.TradeWordsFile;
import limberboard.proofread.rule.PageRemark;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Authors' answers in headers, and the file of what is looked for. */
class AnswersTest {
  @TempDir Path folder;
  private ProofreadPages pages;

  @BeforeEach
  void makePages() {
    pages = new ProofreadPages(folder);
  }

  @Test
  void anAnswerSilencesWhatItAnswersAlone() {
    String answer = "answered: [{rule: not-listed, about: neoprene glue, why: in the kit}]\n";
    pages.work("some", answer, "1. Spread neoprene glue. Hold it with a click wrench.");
    assertThat(pages.found("not-listed", "some")).containsExactly("9 click wrench");
    assertThat(pages.proof("some").answered())
        .singleElement()
        .satisfies(finding -> assertThat(finding.about()).isEqualTo("neoprene glue"));
  }

  @Test
  void anAnswerWithoutAThingAnswersAllThatTheRuleFinds() {
    String answer = "answered: [{rule: not-listed, why: the yard brings all}]\n";
    pages.work("all", answer, "1. Spread neoprene glue. Hold it with a click wrench.");
    assertThat(pages.proof("all").open()).isEmpty();
    assertThat(pages.proof("all").answered()).hasSize(2);
  }

  @Test
  void anAnswerToWhatIsNotFoundIsSaid() {
    String answers =
        "answered:\n"
            + "  - {rule: not-listed, about: glue, why: kit}\n"
            + "  - {rule: not-liste, why: kit}\n";
    pages.work("stale", answers, "1. Look at it.");
    assertThat(pages.found(Proofreader.ANSWER, "stale"))
        .containsExactly("6 not-listed", "7 not-liste");
    assertThat(pages.proof("stale").open().get(0).wrong()).contains("about “glue”", "not found");
    assertThat(pages.proof("stale").open().get(1).right()).contains("not-listed");
  }

  @Test
  void aPageIsReadAsItIsTypedAgainstTheOthersAsTheyWere() throws IOException {
    pages.work("other", "", "1. Hose the hatch for five minutes; see [this](typed.md).");
    pages.work("typed", "tools: [torque-wrench]\n", "1. Hold it with a click wrench.");
    Library library = pages.workspace().library();
    Proofreader reader =
        new Proofreader(
            pages.workspace().folders(),
            library,
            TradeWordsFile.read(pages.workspace().folders(), library).words());
    Page<?> saved = library.page("typed").orElseThrow();
    assertThat(reader.read(saved).open()).isEmpty();
    String before =
        Files.readString(pages.workspace().folders().articles().resolve("procedures/typed.md"));
    String text =
        before.replace("tools: [torque-wrench]\n", "") + "2. Hose the hatch for one minute.\n";
    pages.workspace().write("articles/procedures/typed.md", text);
    Library typed = pages.workspace().library();
    pages.workspace().write("articles/procedures/typed.md", before);
    assertThat(reader.readTyped(typed.page("typed").orElseThrow(), text, typed).open())
        .extracting(PageRemark::rule, PageRemark::line)
        .containsExactlyInAnyOrder(tuple("not-listed", 8), tuple("two-figures", 9));
    assertThat(reader.readTyped(saved, before, library).open()).isEmpty();
  }

  @Test
  void anAnswerNeedsARuleAndAReason() {
    pages.work("bad", "answered: [{about: glue}]\n", "1. Look at it.");
    assertThat(pages.workspace().library().problems())
        .filteredOn(problem -> problem.file().endsWith("bad.md"))
        .extracting(problem -> problem.line() + " " + problem.key() + " " + problem.wrong())
        .contains("5 answered[1].rule is missing", "5 answered[1].why is missing");
  }

  @Test
  void whatIsWrongInTheFileIsSaidWithItsLineAndTheRestWorks() {
    pages.words(
        """
        cautions:
          - {words: [petrol], carry: [petrol-vapor]}
          - {words: [=sanding], carry: [sanding-dust]}
          - {access: [sole-board-lifted], carry: [sanding-dust]}
        needs:
          - {words: [drill], tool: [drill-set]}
        brought:
          - {words: [baulk], listed: [stirp]}
          - {listed: [strip]}
        figures:
          - {about: play, words: [play], measure: size}
        """);
    assertThat(pages.wordsProblems())
        .containsExactly(
            "6 needs[1].tool",
            "11 figures[1].measure",
            "6 needs[1].tools",
            "9 brought[2].words",
            "2 cautions[1].carry[1]",
            "4 cautions[3].access[1]",
            "8 brought[1].listed[1]");
    pages.work("work", "", "1. Begin sanding it.");
    assertThat(pages.found("no-caution", "work")).containsExactly("8 sanding-dust");
  }

  @Test
  void withoutTheFileOnlyWhatNeedsNoWordsIsFound() {
    pages.words("");
    pages.work("work", "work: renew\n", "1. Drain the petrol.");
    assertThat(pages.found("no-caution", "work")).isEmpty();
    assertThat(pages.found("no-before", "work")).hasSize(1);
  }
}
