package limberboard.drill.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import limberboard.boat.WorkCaution;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillDemo;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillRun;
import limberboard.drill.StepDone;
import limberboard.drill.paper.PaperPack.Numbered;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import limberboard.trace.Fault;
import limberboard.words.Sentences;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PaperPackTest {
  private static final Fault OIL = DrillDemo.fault("oil-in-keel-compartment", "whimbrel");
  private static final PaperPack PACK = PaperPack.of(OIL, 7, 20);
  private static final TrainerKey KEY = new TrainerKey(PACK, new Counsel(OIL));
  private static final Pattern NUMBER = Pattern.compile("[0-9]+");

  private static String text(CutPage page) {
    return new PlainText().render(page, 400);
  }

  /** The numbers that stand in the first column of a part's tables. */
  private static Set<Integer> numbers(CutPage page, Part.Role role) {
    return page.parts().stream()
        .filter(part -> part.role() == role)
        .flatMap(part -> part.blocks().stream())
        .filter(Block.Table.class::isInstance)
        .flatMap(table -> ((Block.Table) table).rows().stream())
        .map(row -> ((Inline.Text) row.get(0).get(0)).text())
        .filter(cell -> NUMBER.matcher(cell).matches())
        .map(Integer::parseInt)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void theKeyAnswersEveryNumberOnEverySheet() {
    for (int sheet = 1; sheet <= 20; sheet++) {
      Set<Integer> onSheet = numbers(new StudentSheet(PACK).of(sheet), Part.Role.CHECKS);
      assertThat(onSheet).hasSize(PACK.numbers().size()).hasSizeGreaterThan(10);
      List<TrainerKey.Line> lines = KEY.lines(sheet);
      assertThat(lines).extracting(TrainerKey.Line::number).containsExactlyElementsOf(onSheet);
      assertThat(lines).extracting(TrainerKey.Line::answer).doesNotContain("");
    }
  }

  /** The printed key holds a table of all numbers for every sheet. */
  @Test
  void thePrintedKeyHasEverySheet() {
    CutPage key = KEY.sheet();
    for (int sheet = 1; sheet <= 20; sheet++) {
      String title = "Sheet " + sheet;
      List<Part> parts = key.parts().stream().filter(part -> part.title().equals(title)).toList();
      assertThat(parts).hasSize(1);
      CutPage alone = new CutPage("k", key.kind(), title, "", "", parts);
      assertThat(numbers(alone, Part.Role.CHECKS)).hasSize(PACK.numbers().size());
      assertThat(text(alone))
          .contains("Hidden: " + PACK.drills().get(sheet - 1).hiddenCause().title());
    }
    assertThat(numbers(key, Part.Role.FACTS)).hasSize(20);
  }

  /** What the trainer answers is what the drill on the computer would have answered. */
  @Test
  void theKeyAnswersAsTheDrillDoes() {
    for (int sheet = 1; sheet <= 20; sheet++) {
      Drill drill = PACK.drills().get(sheet - 1);
      List<TrainerKey.Line> lines = KEY.lines(sheet);
      for (Numbered each : PACK.numbers()) {
        StepDone done = DrillRun.begin(drill).take(each.step(50)).last().orElseThrow();
        String answer = lines.get(each.number() - 1).answer();
        if (done.reply().kind() == Kind.ANSWER) {
          assertThat(answer).isEqualTo(Sentences.capital(Sentences.spoken(done.reply().said())));
        } else if (done.reply().kind() == Kind.MENDED) {
          assertThat(answer).isEqualTo("The fault is gone");
        } else if (done.reply().kind() == Kind.NOT_YOURS) {
          assertThat(answer).startsWith("Not yours");
          assertThat(lines.get(each.number() - 1).lost()).isEmpty();
        } else if (done.reply().kind() == Kind.NOT_CURED) {
          assertThat(answer).isEqualTo("The fault is still there");
        } else {
          assertThat(answer).isEqualTo("It can't be told");
        }
      }
    }
  }

  @Test
  void aSheetTellsNothingOfWhatIsHiddenAndEveryCaution() {
    for (int sheet = 1; sheet <= 20; sheet++) {
      CutPage page = new StudentSheet(PACK).of(sheet);
      String text = text(page);
      assertThat(text).doesNotContain("Hidden").doesNotContain("%,");
      assertThat(page.parts().get(0).role()).isEqualTo(Part.Role.CAUTIONS);
      for (WorkCaution caution : PACK.drills().get(sheet - 1).cautions()) {
        assertThat(text).contains(caution.title());
      }
      assertThat(text).contains(PACK.drills().get(sheet - 1).letter().get(1).substring(0, 30));
    }
    assertThat(text(new StudentSheet(PACK).of(1)).replaceAll("Sheet \\d+", ""))
        .as("two sheets differ in their letters alone")
        .isNotEqualTo(text(new StudentSheet(PACK).of(2)).replaceAll("Sheet \\d+", ""));
  }

  @Test
  void theSameSeedMakesTheSamePackAndNeighboursHaveOtherFaults() {
    PaperPack again = PaperPack.of(OIL, 7, 20);
    assertThat(again.drills())
        .extracting(drill -> drill.order().seed())
        .isEqualTo(PACK.drills().stream().map(drill -> drill.order().seed()).toList());
    for (int sheet = 1; sheet < 20; sheet++) {
      assertThat(PACK.drills().get(sheet).hiddenCause())
          .isNotEqualTo(PACK.drills().get(sheet - 1).hiddenCause());
    }
    Set<String> hidden = new HashSet<>();
    PACK.drills().forEach(drill -> hidden.add(drill.hiddenCause().id()));
    assertThat(hidden).hasSizeGreaterThan(3);
    assertThatThrownBy(() -> PaperPack.of(OIL, 7, 0)).hasMessageContaining("1 to 200");
  }

  @Test
  void allSheetsStandInOneFileEachOnPagesOfItsOwn() throws IOException {
    PaperPack three = PaperPack.of(OIL, 7, 3);
    StudentSheet sheets = new StudentSheet(three);
    List<CutPage> pages = IntStream.rangeClosed(1, 3).mapToObj(sheets::of).toList();
    byte[] pdf = new Pdf(Pictures.in(new WorkspaceFolders(Path.of("")))).of(pages);
    try (var read = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(read);
      assertThat(read.getNumberOfPages()).isGreaterThanOrEqualTo(3);
      assertThat(text).contains("Sheet 1:", "Sheet 2:", "Sheet 3:", "Page 1 of");
      for (Numbered each : three.numbers()) {
        assertThat(text).containsPattern("(?m)^" + each.number() + " ");
      }
    }
  }
}
