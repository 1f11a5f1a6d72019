package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.Library;
import limberboard.library.TestWorkspace;
import limberboard.print.PdfText;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.xhtml.Xhtml;
import limberboard.workings.QuantityWords;
import limberboard.workings.UnitsBeside;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A figure that is changed at one place is changed in the window, on paper and in the terminal. */
class QuotedFiguresCommandTest {
  private static final String TIGHTEN =
      "---\ntitle: Tighten\nsystem: hull\nwork: mend\nskill: owner\nminutes: 30\n"
          + "look-for: {good: \"Holds [8 N·m](../materials/bolts.md#m6).\", bad: Slack.}\n---\n"
          + "1. Turn the nut: [8 N·m](../materials/bolts.md#m6) for M6.\n";

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makePages() {
    workspace = new TestWorkspace(folder);
    bolts("8 N·m");
    workspace.write("articles/procedures/tighten.md", TIGHTEN);
  }

  private void bolts(String torque) {
    workspace.write(
        "articles/materials/bolts.md",
        "---\ntitle: Bolts\ngroup: fastener\nunit: piece\npacks: [{name: box, holds: 20}]\n"
            + "figures:\n  m6: {title: M6, value: "
            + torque
            + ", at: dry, source: a handbook}\n---\nOf steel.\n");
  }

  private Ran run(String... words) {
    return new TerminalRun(folder, LocalDate.of(2026, 5, 1)).run(words);
  }

  private String window(Library library, String page, QuantityWords units) {
    CutPage cut =
        new PageCutter(library, units).cut(library.page(page).orElseThrow(), Optional.empty());
    return PdfText.flat(
        new Xhtml(Pictures.in(workspace.folders()))
            .render(cut, Look.LIGHT)
            .replaceAll("<[^>]*>", " "));
  }

  private String paper(String page) throws IOException {
    Path pdf = folder.resolve(page + ".pdf");
    run("read", page, "--pdf", pdf.toString()).ended(ExitCode.OK);
    try (PDDocument read = Loader.loadPDF(Files.readAllBytes(pdf))) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      return PdfText.flat(stripper.getText(read));
    } finally {
      Files.delete(pdf);
    }
  }

  @Test
  void everyOutputFollowsTheFigure() throws IOException {
    for (String torque : new String[] {"8 N·m", "9.5 N·m"}) {
      bolts(torque);
      String window = window(workspace.library(), "tighten", QuantityWords.METRIC);
      assertThat(window).contains("Holds " + torque + ".").containsPattern(torque + "\\s+for M6");
      assertThat(paper("tighten"))
          .contains("Holds " + torque + ".")
          .contains("Turn the nut: " + torque + " for M6.");
      String text = PdfText.flat(run("read", "tighten").ended(ExitCode.OK).out());
      assertThat(text)
          .contains("Holds " + torque + ".")
          .contains("Turn the nut: " + torque + " for M6.");
      String json = run("read", "tighten", "--json").json().get("text").asText();
      assertThat(PdfText.flat(json).strip()).isEqualTo(text.strip());
    }
  }

  @Test
  void theFiguresOwnPageTellsItsSource() {
    assertThat(PdfText.flat(run("read", "bolts").ended(ExitCode.OK).out()))
        .contains("Figures", "M6, dry", "8 N·m", "a handbook");
  }

  /** 1 lbf ft = 1.355 818 N·m (NIST SP 811, appendix B.8). */
  @Test
  void otherUnitsStandBesideAQuotedFigure() {
    QuantityWords imperial = new QuantityWords(UnitsBeside.IMPERIAL);
    assertThat(window(workspace.library(), "tighten", imperial)).contains("8 N·m (5.9 lbf ft)");
    assertThat(window(workspace.library(), "bolts", imperial)).contains("8 N·m (5.9 lbf ft)");
    bolts("8 to 10 N·m");
    assertThat(window(workspace.library(), "tighten", imperial))
        .contains("8 to 10 N·m (5.9 lbf ft to 7.38 lbf ft)");
  }

  @Test
  void validateSaysWhereAndOneCommandWritesItEverywhere() throws IOException {
    Path file = folder.resolve("articles/procedures/tighten.md");
    assertThat(run("validate").ended(ExitCode.OK).out()).contains("\n0 problems");
    bolts("10 N·m");
    String said = "says \"8 N·m\", and bolts.md says \"10 N·m\" at m6; write 10 N·m\n";
    assertThat(run("validate").ended(ExitCode.OK).out())
        .contains("articles/procedures/tighten.md:7: warning: look-for.good: " + said)
        .contains("articles/procedures/tighten.md:9: warning: figure: " + said);
    assertThat(run("proofread", "--write-figures").ended(ExitCode.OK).out())
        .isEqualTo(
            "“10 N·m” now stands wherever “m6” of bolts is quoted.\n1 figure written anew\n");
    assertThat(Files.readString(file)).isEqualTo(TIGHTEN.replace("8 N·m", "10 N·m"));
    assertThat(run("validate").ended(ExitCode.OK).out()).contains("\n0 problems");
    assertThat(run("proofread", "--write-figures").ended(ExitCode.OK).out())
        .isEqualTo("0 figures written anew\n");
  }

  @Test
  void aPageThatIsRenamedIsFollowed() throws IOException {
    run("rename", "bolts", "steel-bolts").ended(ExitCode.OK);
    String text = Files.readString(folder.resolve("articles/procedures/tighten.md"));
    assertThat(text).isEqualTo(TIGHTEN.replace("bolts.md", "steel-bolts.md"));
    assertThat(run("validate").ended(ExitCode.OK).out()).contains("\n0 problems");
  }
}
