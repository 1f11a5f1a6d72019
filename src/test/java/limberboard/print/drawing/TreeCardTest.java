package limberboard.print.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.print.PdfText;
import limberboard.print.SmallYard;
import limberboard.print.Trees;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.xhtml.Xhtml;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.Fault;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;
import limberboard.words.PerCent;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The card of every symptom and boat, read back from the PDF with another library. */
class TreeCardTest {
  private static final double LEAST_POINTS = 8.99;
  private static final double POINTS = 72.0 / 96;
  private static final Pattern SIZE = Pattern.compile("font-size=\"([0-9.]+)\"");
  private static final double RAREST = 0.02;
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);

  private final TreeCard cards = new TreeCard();

  @Test
  void isOneSheetInLegibleLettersWithTheCautionsOfEveryStepShown() throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    Workspace workspace = new WorkspaceReader(folders).read();
    int made = 0;
    for (Boat boat : workspace.boats()) {
      Fitting fitting = new Fitting(boat, ON);
      for (Page<Symptom> symptom : workspace.library().all(Symptom.class)) {
        if (fitting.fits(symptom.head().fits())) {
          Fault fault = Fault.of(symptom, fitting, workspace.library(), List.of());
          holds(folders, cards.cut(DiagnosticTree.of(Trace.begin(fault), RAREST)));
          made++;
        }
      }
    }
    assertThat(made).isGreaterThan(50);
  }

  private void holds(WorkspaceFolders folders, TreeCut cut) throws IOException {
    String what = cut.tree().from().fault().page().id();
    assertThat(cards.fits(cut)).as(what).isTrue();
    CutPage card = cards.of(cut);
    try (PDDocument pdf = Loader.loadPDF(PdfText.bytes(card, folders))) {
      assertThat(pdf.getNumberOfPages()).as(what).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(pdf)).as(what).contains("Page 1 of 1");
    }
    String paper = new Xhtml(Pictures.in(folders)).render(card, Look.PAPER);
    assertThat(paper)
        .as("not made smaller to fit")
        .contains("width: " + (int) TreeCard.WIDTH + "px; height: " + (int) TreeCard.HEIGHT + "px");
    Matcher sizes = SIZE.matcher(cards.drawing(cut));
    while (sizes.find()) {
      assertThat(Double.parseDouble(sizes.group(1)) * POINTS).as(what).isGreaterThan(LEAST_POINTS);
    }
    String drawn = drawn(cut);
    assertThat(drawn)
        .as(what)
        .contains("covers " + PerCent.words(cut.share()) + " of what happens");
    for (Fork fork : cut.forks()) {
      if (!(fork.step() instanceof CallYard)) {
        assertThat(drawn).as(what).contains(PdfText.flat(CardWords.step(fork)));
      }
      if (fork.step() instanceof DoMend mend) {
        assertThat(drawn).as(what).contains(mend.id());
      }
      fork.step().safety().ifPresent(safe -> assertThat(drawn).as(what).contains(safe));
    }
    for (WorkCaution caution : cut.cautions()) {
      String said = caution.emergency() ? caution.page().details().danger() : caution.danger();
      assertThat(drawn).as(what).contains(caution.title(), said);
    }
  }

  /** The drawing's text with single spaces. */
  private String drawn(TreeCut cut) {
    return PdfText.flat(
        cards
            .drawing(cut)
            .replaceAll("<[^>]*>", " ")
            .replace("&quot;", "\"")
            .replace("&amp;", "&"));
  }

  @Test
  void whatIsNotOnTheCardHasItsNumberInTheWholeTree() {
    DiagnosticTree tree = Trees.of(new SmallYard(), "drips", "avocet");
    TreeCut root = TreeCut.root(tree);
    Fork next = tree.forks().get(1);
    assertThat(drawn(root)).contains("→ (" + next.number() + ")", "limberboard tree drips");
    assertThat(next.step()).isNotInstanceOf(CallYard.class);
    TreeCut both = new TreeCut(tree, List.of(tree.root().number(), next.number()));
    assertThat(drawn(both)).doesNotContain("→ (" + next.number() + ")");
    assertThat(PdfText.flat(cards.text(both, 1000)))
        .contains(CardWords.step(next), "covers " + PerCent.words(both.share()));
  }

  @Test
  void aSmallTreeIsThereWhole() {
    DiagnosticTree only = Trees.yardOnly(new SmallYard());
    TreeCut cut = cards.cut(only);
    assertThat(cut.share()).isEqualTo(1);
    assertThat(drawn(cut)).contains("Hand it to the yard", "Found already");
  }

  @Test
  void whereNotEvenTheFirstStepHasRoomThePageSaysSo() {
    SmallYard yard = new SmallYard();
    TreeCut whole = TreeCut.root(Trees.of(yard, "drips", "avocet")).whole();
    assertThat(cards.of(whole).part(Part.Role.NOTICE).isPresent()).isEqualTo(!cards.fits(whole));
    assertThat(cards.of(cards.cut(whole.tree())).parts().get(0).blocks().get(0))
        .isInstanceOf(Block.Drawing.class);
  }
}
