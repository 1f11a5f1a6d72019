package limberboard.print.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.picture.PictureSafety;
import limberboard.print.PdfText;
import limberboard.print.PrintContrastTest;
import limberboard.print.SmallYard;
import limberboard.print.Trees;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.pdf.StrictXml;
import limberboard.print.picture.Look;
import limberboard.print.picture.SvgPicture;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;
import limberboard.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A diagnostic tree as a drawing. */
class TreeDrawingTest {
  private static final double LEAST_CONTRAST = 4.5;
  private static final String LONG_WORD = "W".repeat(300);

  private final SmallYard yard = new SmallYard();
  private final DiagnosticTree tree = Trees.of(yard, "drips", "avocet");

  @Test
  void everyForkIsDrawnWithItsNumberAndWords() throws IOException {
    List<String> boxes = boxTexts(whole(tree));
    assertThat(tree.forks()).hasSizeGreaterThan(4);
    for (Fork fork : tree.forks()) {
      assertThat(boxes)
          .filteredOn(
              box -> box.startsWith(fork.number() + " · " + TreeWords.kind(fork.step()) + " "))
          .singleElement()
          .satisfies(box -> assertThat(box).contains(fork.step().text()));
    }
  }

  @Test
  void cautionsInTwoLinesAndLegendStandAboveTheTreeAndTheWholeTextOnceBelow() throws IOException {
    List<String> boxes = boxTexts(whole(tree));
    List<WorkCaution> cautions = tree.cautions();
    int count = cautions.size();
    int first = boxes.indexOf(boxes.stream().filter(box -> box.startsWith("1 · ")).findAny().get());
    assertThat(boxes.subList(0, first))
        .hasSize(count + 5)
        .contains("Mend you may do", "Hand over to the yard", "Seldom: ask the program");
    int forks = boxes.size() - count - first;
    assertThat(boxes.subList(first, first + forks)).noneMatch(box -> box.startsWith("Caution"));
    for (int i = 0; i < count; i++) {
      WorkCaution caution = cautions.get(i);
      assertThat(boxes.get(i))
          .isEqualTo("Caution: " + caution.title() + " " + caution.danger() + " " + caution.rule());
      assertThat(boxes.get(first + forks + i))
          .startsWith("Caution: " + caution.title())
          .contains(caution.page().details().danger())
          .contains(caution.page().details().act());
    }
  }

  @Test
  void aCutTreeSaysAtEachEndWhatComesNextAndWhatItMayBe() throws IOException {
    TreeCut cut = TreeCut.levels(tree, 2);
    List<String> boxes = boxTexts(new TreeDrawing().of(cut));
    assertThat(cut.ends()).isNotEmpty();
    for (Fork end : cut.ends()) {
      assertThat(boxes).anyMatch(box -> box.equals(Sentences.capital(TreeWords.goesOn(end))));
      assertThat(boxes).noneMatch(box -> box.startsWith(end.number() + " · "));
    }
    assertThat(boxes).contains("Goes on in the whole tree");
    clear(new SheetTreeLayout(cut, TreeStyle.WHOLE, TreeSheet::facts, 5, 7));
  }

  @Test
  void textStaysWithinItsBoxAndBoxesLieClearOfEachOther() {
    for (TreeStyle style : List.of(TreeStyle.WHOLE, TreeStyle.paper(3))) {
      SheetTreeLayout placed =
          new SheetTreeLayout(TreeCut.all(tree), style, TreeSheet::facts, 5, 7);
      assertThat(placed.boxes()).hasSizeGreaterThan(4);
      clear(placed);
    }
  }

  /** The boxes of a layout and the texts on its lines. */
  private static void clear(SheetTreeLayout placed) {
    for (DrawnBox box : placed.boxes()) {
      for (Line line : box.lines()) {
        assertThat(line.width()).isLessThanOrEqualTo(DrawnBox.room(box.width()));
      }
      assertThat(DrawnBox.height(box.lines())).isLessThanOrEqualTo(box.height());
      assertThat(box.x() + box.width()).isLessThanOrEqualTo(placed.right());
      assertThat(box.y() + box.height()).isLessThanOrEqualTo(7 + placed.height() + 1e-6);
    }
    for (int i = 0; i < placed.boxes().size(); i++) {
      for (DrawnBox other : placed.boxes().subList(i + 1, placed.boxes().size())) {
        DrawnBox box = placed.boxes().get(i);
        assertThat(
                box.x() + box.width() <= other.x()
                    || other.x() + other.width() <= box.x()
                    || box.y() + box.height() <= other.y()
                    || other.y() + other.height() <= box.y())
            .as("%s and %s", box, other)
            .isTrue();
      }
    }
    for (DrawnEdge edge : placed.edges()) {
      List<Line> texts = new ArrayList<>(edge.above());
      texts.add(edge.below());
      assertThat(texts)
          .allSatisfy(
              line ->
                  assertThat(line.width())
                      .isLessThanOrEqualTo(DrawnEdge.room(edge.toX() - edge.fromX())));
    }
  }

  @Test
  void linesRunFromBoxToBox() {
    SheetTreeLayout placed =
        new SheetTreeLayout(TreeCut.all(tree), TreeStyle.WHOLE, TreeSheet::facts, 0, 0);
    assertThat(placed.edges()).hasSize(placed.boxes().size() - 1);
    for (DrawnEdge edge : placed.edges()) {
      assertThat(placed.boxes())
          .anyMatch(
              box ->
                  box.x() == edge.toX()
                      && edge.toY() > box.y()
                      && edge.toY() < box.y() + box.height());
      assertThat(placed.boxes())
          .anyMatch(
              box ->
                  box.x() + box.width() == edge.fromX()
                      && edge.fromY() > box.y()
                      && edge.fromY() < box.y() + box.height());
    }
  }

  @Test
  void itNeedsNothingFromOutsideAndItsLettersStandOut() throws IOException {
    String svg = whole(tree);
    assertThat(PictureSafety.wrong(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))))
        .isEmpty();
    NodeList texts = StrictXml.parse(svg).getElementsByTagName("text");
    assertThat(texts.getLength()).isPositive();
    for (int i = 0; i < texts.getLength(); i++) {
      String fill = ((Element) texts.item(i)).getAttribute("fill");
      assertThat(PrintContrastTest.contrast(fill, "#ffffff")).isGreaterThan(LEAST_CONTRAST);
      assertThat(PrintContrastTest.contrast(fill, "#eef3f5")).isGreaterThan(LEAST_CONTRAST);
    }
    assertThat(svg).contains("font-family=\"Inter, sans-serif\"");
  }

  @Test
  void theBeginningFitsOnASheetAtItsNaturalSize() throws IOException {
    String svg = new TreeDrawing().beginning(TreeCut.all(tree));
    SvgPicture picture = SvgPicture.parse(svg, Look.PAPER).orElseThrow();
    assertThat((double) picture.width()).isLessThanOrEqualTo(TreeDrawing.PAPER_WIDTH);
    assertThat((double) picture.height()).isLessThanOrEqualTo(TreeDrawing.PAPER_HEIGHT);
    assertThat(boxTexts(svg).get(0)).startsWith("1 · ");
    assertThat(svg).doesNotContain("font-size=\"11").contains("font-size=\"12.0\"");
  }

  @Test
  void aTreeOfNothingButTheYardIsDrawn() throws IOException {
    assertThat(boxTexts(whole(Trees.yardOnly(yard))))
        .filteredOn(box -> box.startsWith("1 · The yard"))
        .hasSize(1);
  }

  @Test
  void markupAndEndlessWordsInTitlesAreOnlyText(@TempDir Path folder) throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
    workspace.write(
        "articles/symptoms/odd.md",
        """
        ---
        title: "<script>&amp; ]]> \\"odd\\" %s"
        zones: [cabin]
        causes:
          - {id: seal, title: "<b>seal</b> & co", weight: 3, mend: mend}
          - {id: other, title: Other, weight: 3, mend: mend}
        checks:
          - id: look
            ask: "Is <it> & %s wet?"
            how: Look.
            minutes: 1
            answers: [%s, no]
            finds: {no: {seal: always, other: never}}
        ---
        """
            .formatted(LONG_WORD, LONG_WORD, "m".repeat(200)));
    Workspace read = new WorkspaceReader(new WorkspaceFolders(folder)).read();
    DiagnosticTree odd =
        DiagnosticTree.of(
            Trace.begin(
                Fault.of(
                    read.library().symptom("odd").orElseThrow(),
                    new Fitting(read.boat("knot").orElseThrow(), LocalDate.of(2020, 4, 1)),
                    read.library(),
                    List.of())),
            0);
    String svg = new TreeDrawing().whole(odd);
    assertThat(StrictXml.parse(svg).getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("<script>&amp; ]]> \"odd\" " + LONG_WORD);
    assertThat(StrictXml.parse(svg).getElementsByTagName("script").getLength()).isZero();
    clear(new SheetTreeLayout(TreeCut.all(odd), TreeStyle.WHOLE, TreeSheet::facts, 5, 7));
    clear(new SheetTreeLayout(TreeCut.all(odd), TreeStyle.paper(3), TreeSheet::facts, 5, 7));
    String pdf = PdfText.byColumn(yard, new TreeSheet().of(odd));
    assertThat(pdf).contains("Is <it> &", "<script>&amp; ]]> \"odd\"");
    assertThat(pdf.chars().filter(letter -> letter == 'W').count()).isGreaterThanOrEqualTo(600);
  }

  private String whole(DiagnosticTree drawn) {
    return new TreeDrawing().whole(drawn);
  }

  /** The text of each box, its lines joined by spaces. */
  private static List<String> boxTexts(String svg) throws IOException {
    NodeList groups = StrictXml.parse(svg).getElementsByTagName("g");
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < groups.getLength(); i++) {
      NodeList lines = ((Element) groups.item(i)).getElementsByTagName("text");
      List<String> words = new ArrayList<>();
      for (int j = 0; j < lines.getLength(); j++) {
        words.add(lines.item(j).getTextContent());
      }
      texts.add(words.stream().collect(Collectors.joining(" ")));
    }
    return texts;
  }
}
