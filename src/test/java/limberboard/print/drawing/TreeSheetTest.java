package limberboard.print.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import limberboard.library.value.Skill;
import limberboard.print.PdfText;
import limberboard.print.SmallYard;
import limberboard.print.Trees;
import limberboard.print.cut.CheckCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.words.PerCent;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/** A diagnostic tree on paper and in a terminal; the PDF is read back with another library. */
class TreeSheetTest {
  private static final double LEAST_POINTS = 8.99;

  private final SmallYard yard = new SmallYard();
  private final DiagnosticTree tree = Trees.of(yard, "drips", "avocet");

  @Test
  void everyForkIsThereInOrderWithItsNumberAndQuestion() {
    assertThat(tree.forks()).hasSizeGreaterThan(4);
    List<Block.Fork> printed = forks(sheet(tree));
    assertThat(printed)
        .extracting(Block.Fork::number)
        .containsExactlyElementsOf(tree.forks().stream().map(Fork::number).toList());
    String pdf = pdf(tree);
    int after = pdf.indexOf("The steps");
    assertThat(after).isPositive();
    for (Fork fork : tree.forks()) {
      int at = pdf.indexOf(" " + fork.number() + " " + TreeWords.what(fork.step()), after);
      assertThat(at).as("fork %d after %d in %s", fork.number(), after, pdf).isGreaterThan(0);
      after = at;
    }
  }

  @Test
  void everyAnswerLeadsToAForkThatNamesTheWayBack() {
    List<Block.Fork> printed = forks(sheet(tree));
    assertThat(printed.get(0).from()).isEmpty();
    int followed = 0;
    for (Block.Fork fork : printed) {
      for (Block.Way way : fork.ways()) {
        if (way.then().startsWith("→ ")) {
          int number = Integer.parseInt(way.then().split("[ ,]+")[1]);
          assertThat(printed.get(number - 1).from()).hasValue(fork.number());
          followed++;
        }
      }
    }
    assertThat(followed).isEqualTo(printed.size() - 1);
    assertThat(pdf(tree)).contains("→ " + tree.forks().get(1).number()).contains("from 1");
  }

  @Test
  void cautionsOfTheSymptomTheChecksAndTheMendsComeBeforeAnyFork() {
    assertThat(sheet(tree).parts().get(0).role()).isEqualTo(Part.Role.CAUTIONS);
    assertThat(sheet(tree).cautions())
        .extracting(Block.CautionBox::id)
        .containsExactly("ashore", "fire", "vapour");
    assertThat(sheet(tree).cautions().get(2).because()).isEqualTo("Bed the eye again");
    assertThat(sheet(tree).shortCautions())
        .extracting(Block.ShortCaution::id)
        .containsExactly("ashore", "fire", "vapour");
    for (String output : List.of(PdfText.flat(pdf(tree)), PdfText.flat(yard.text(sheet(tree))))) {
      int steps = output.indexOf("The steps");
      assertThat(steps).isPositive();
      for (Block.ShortCaution two : sheet(tree).shortCautions()) {
        assertThat(output.indexOf(two.danger())).as(two.id()).isBetween(0, steps);
      }
      for (Block.CautionBox box : sheet(tree).cautions()) {
        assertThat(output.lastIndexOf(box.danger())).as(box.id()).isGreaterThan(steps);
      }
    }
    String onScreen = PdfText.flat(new TreeText().render(tree, 1000));
    int steps = onScreen.indexOf("The steps");
    for (Block.ShortCaution two : sheet(tree).shortCautions()) {
      assertThat(onScreen.indexOf(two.danger())).as(two.id()).isBetween(0, steps);
    }
    for (Block.CautionBox box : sheet(tree).cautions()) {
      assertThat(onScreen.lastIndexOf(box.danger())).as(box.id()).isGreaterThan(steps);
    }
  }

  @Test
  void everySheetHasItsFooterAndNoLetterBelowNinePoints() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes(tree))) {
      int pages = pdf.getNumberOfPages();
      assertThat(pages).isGreaterThan(1);
      for (int page = 1; page <= pages; page++) {
        SmallLetters letters = new SmallLetters();
        letters.setStartPage(page);
        letters.setEndPage(page);
        assertThat(PdfText.flat(letters.getText(pdf)))
            .contains("Page " + page + " of " + pages)
            .contains("Drips in the bow · Cut to Avocet: Cruiser, hull 3, built 2012");
        assertThat(letters.small.toString()).isEmpty();
      }
    }
  }

  @Test
  void aForkIsNotDividedBetweenTwoSheets() throws IOException {
    DiagnosticTree twice = Trees.of(yard, "drips", "avocet");
    try (PDDocument pdf = Loader.loadPDF(bytes(twice))) {
      for (Fork fork : twice.forks()) {
        List<String> facts = TreeWords.facts(fork);
        String heading = fork.number() + " " + TreeWords.what(fork.step());
        boolean whole = false;
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
          PDFTextStripper stripper = new PDFTextStripper();
          stripper.setSortByPosition(false);
          stripper.setStartPage(page);
          stripper.setEndPage(page);
          String text = PdfText.flat(stripper.getText(pdf));
          whole |=
              text.contains(TreeWords.what(fork.step()))
                  && text.contains(facts.get(facts.size() - 1).split(";")[0]);
        }
        assertThat(whole).as(heading).isTrue();
      }
    }
  }

  @Test
  void licensedWorkIsNeverTheOwners() {
    DiagnosticTree gas = Trees.of(yard, "smell-of-gas", "knot");
    assertThat(gas.root().step())
        .isInstanceOfSatisfying(
            DoCheck.class,
            check -> assertThat(check.check().check().skill()).isEqualTo(Skill.LICENSED));
    assertThat(gas.forks()).noneMatch(fork -> fork.step() instanceof DoMend);
    for (String output : outputs(gas).toList()) {
      assertThat(output)
          .contains("Does the pressure fall?", "Who: only a person licensed for it")
          .contains("Only a person licensed for it may mend the first.")
          .doesNotContain("Mend: ")
          .doesNotContain("Secretly turn the union")
          .doesNotContain("Undo the union nut");
    }
    assertThat(pdf(gas)).contains(CheckCutter.HOW_NOT_PRINTED);
  }

  @Test
  void whoMayDoAMendStandsBesideIt() {
    for (String output : outputs(tree).toList()) {
      assertThat(output)
          .containsSubsequence(
              "Mend: Bed the eye again", "Caution: Vapour", "Who: an owner used to tools");
    }
  }

  @Test
  void howEachCheckIsMadeStandsAtTheEndOnce() {
    assertThat(pdf(tree)).containsOnlyOnce("Dip a finger in.");
  }

  @Test
  void aTreeOfNothingButTheYardIsPrintedToo() {
    DiagnosticTree only = Trees.yardOnly(yard);
    assertThat(only.forks()).hasSize(1);
    for (String output : outputs(only).toList()) {
      assertThat(output)
          .contains("Found already", "Hand it to the yard", "A boat on props can fall");
    }
  }

  @Test
  void whatIsLeftOutIsSaid() {
    DiagnosticTree cut = DiagnosticTree.of(tree.from(), 0.2);
    assertThat(cut.notDrawn()).isPositive();
    for (String output : outputs(cut).toList()) {
      assertThat(output)
          .contains("less than once in 5 ")
          .contains("come up in " + PerCent.words(cut.notDrawn()))
          .containsPattern("seldom[:,]\\s+likeliest\\s+“");
    }
    assertThat(pdf(tree)).doesNotContain("less than once in");
  }

  /** Collects letters smaller than they may be. */
  private static final class SmallLetters extends PDFTextStripper {
    private final StringBuilder small = new StringBuilder();

    @Override
    protected void processTextPosition(TextPosition text) {
      super.processTextPosition(text);
      if (text.getFontSizeInPt() < LEAST_POINTS) {
        small.append(text.getUnicode());
      }
    }
  }

  private CutPage sheet(DiagnosticTree printed) {
    return new TreeSheet().of(printed);
  }

  private static List<Block.Fork> forks(CutPage sheet) {
    return sheet.parts().stream()
        .flatMap(part -> part.blocks().stream())
        .filter(Block.Forks.class::isInstance)
        .flatMap(block -> ((Block.Forks) block).forks().stream())
        .toList();
  }

  private byte[] bytes(DiagnosticTree printed) {
    return PdfText.bytes(sheet(printed), yard.folders());
  }

  private String pdf(DiagnosticTree printed) {
    return PdfText.byColumn(yard, sheet(printed));
  }

  private Stream<String> outputs(DiagnosticTree printed) {
    return Stream.of(pdf(printed), yard.text(sheet(printed)), new TreeText().render(printed, 1000))
        .map(PdfText::flat);
  }
}
