package limberboard.desktop.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import limberboard.print.type.TextMeasure;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TreeLayoutTest {
  /** Every character is seven wide, every line seventeen high. */
  private static final TextMeasure PLAIN =
      new TextMeasure() {
        @Override
        public double width(int letter, boolean strong) {
          return 7;
        }

        @Override
        public double line() {
          return 17;
        }
      };

  private static void holds(TreeLayout layout) {
    List<Rectangle2D> all =
        java.util.stream.Stream.concat(
                layout.boxes().stream().map(Box::bounds),
                layout.twigs().stream().flatMap(twig -> twig.tag().stream()))
            .toList();
    Rectangle2D paper = new Rectangle2D.Double(0, 0, layout.width(), layout.height());
    for (int i = 0; i < all.size(); i++) {
      assertThat(paper.contains(all.get(i))).as("box %d on the paper", i).isTrue();
      for (int j = i + 1; j < all.size(); j++) {
        assertThat(all.get(i).intersects(all.get(j))).as("boxes %d and %d", i, j).isFalse();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"1,1", "2,2", "3,3", "4,3", "5,2", "2,9"})
  void noBoxCoversAnotherAndAllAreOnThePaper(int levels, int branches) {
    TreeWalk walk = new TreeWalk(SmallTrees.regular(levels, branches));
    holds(TreeLayout.of(walk, PLAIN));
    walk.unfoldAll();
    TreeLayout whole = TreeLayout.of(walk, PLAIN);
    assertThat(whole.boxes()).hasSize(walk.tree().forks().size());
    holds(whole);
  }

  @Test
  void theSameHoldsForARealTreeWithTheTraceAnywhereOnIt() {
    DiagnosticTree tree = SmallTrees.wetLocker();
    TreeWalk walk = new TreeWalk(tree);
    walk.unfoldAll();
    for (Fork fork : tree.forks()) {
      walk.mark(java.util.Optional.of(fork));
      holds(TreeLayout.of(walk, PLAIN));
    }
  }

  @Test
  void theWayToWhereTheTraceStandsIsAStraightLine() {
    DiagnosticTree tree = SmallTrees.regular(4, 3);
    TreeWalk walk = new TreeWalk(tree);
    Fork deep = tree.forks().get(tree.forks().size() - 1);
    walk.mark(java.util.Optional.of(deep));
    TreeLayout layout = TreeLayout.of(walk, PLAIN);
    double level = layout.box(deep).orElseThrow().bounds().getCenterY();
    List<Box> way = layout.boxes().stream().filter(box -> walk.isOnTheWay(box.fork())).toList();
    assertThat(way).hasSize(4);
    assertThat(way).allMatch(box -> Math.abs(box.bounds().getCenterY() - level) < 1e-9);
  }

  @Test
  void boxesOfForksBehindStandFurtherRight() {
    TreeWalk walk = new TreeWalk(SmallTrees.wetLocker());
    walk.unfoldAll();
    TreeLayout layout = TreeLayout.of(walk, PLAIN);
    for (Box box : layout.boxes()) {
      box.fork().branches().stream()
          .flatMap(branch -> branch.then().stream())
          .forEach(
              then ->
                  assertThat(layout.box(then).orElseThrow().bounds().getX())
                      .isGreaterThan(box.bounds().getMaxX()));
    }
  }

  @Test
  void pointsFindBoxesAndMarks() {
    TreeWalk walk = new TreeWalk(SmallTrees.wetLocker());
    TreeLayout layout = TreeLayout.of(walk, PLAIN);
    Box root = layout.box(walk.tree().root()).orElseThrow();
    Point2D inside = new Point2D.Double(root.bounds().getX() + 5, root.bounds().getCenterY());
    assertThat(layout.at(inside)).contains(walk.tree().root());
    assertThat(layout.markAt(inside)).isEmpty();
    var mark = root.mark().orElseThrow();
    assertThat(layout.markAt(new Point2D.Double(mark.getCenterX(), mark.getCenterY())))
        .contains(walk.tree().root());
    assertThat(layout.at(new Point2D.Double(0, 0))).isEmpty();
  }

  @Test
  void aFoldedForkSaysHowManyAreBehindIt() {
    TreeWalk walk = new TreeWalk(SmallTrees.regular(3, 2));
    walk.toggle(walk.tree().root());
    TreeLayout layout = TreeLayout.of(walk, PLAIN);
    assertThat(layout.boxes()).singleElement().extracting(Box::more).isEqualTo("6 more");
    assertThat(layout.twigs()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "short,70,2,short",
    "two words,42,2,two|words",
    "three short words,42,2,three|short…",
    "unbreakable,42,3,unbrea|kable",
    "unbreakable word,42,1,unbre…",
    "'',42,2,''"
  })
  void linesBreakBetweenWords(String text, double width, int most, String lines) {
    List<String> broken = PLAIN.lines(text, false, width, most);
    assertThat(String.join("|", broken)).isEqualTo(lines);
    assertThat(broken).allMatch(line -> PLAIN.width(line, false) <= width);
  }

  @Test
  void zoomStaysWithinBoundsAndFitsWithoutEnlarging() {
    assertThat(Zoom.USUAL.by(1).by(-1).factor())
        .isCloseTo(1, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(Zoom.USUAL.by(100)).isEqualTo(Zoom.USUAL.by(200));
    assertThat(Zoom.USUAL.by(-100)).isEqualTo(Zoom.USUAL.by(-200));
    assertThat(Zoom.fitting(1000, 100, 500, 500).factor()).isEqualTo(0.5);
    assertThat(Zoom.fitting(100, 100, 500, 500)).isEqualTo(Zoom.USUAL);
    assertThat(new Zoom(0.854).words()).isEqualTo("85 %");
  }
}
