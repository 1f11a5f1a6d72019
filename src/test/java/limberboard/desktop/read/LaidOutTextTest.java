package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.datatransfer.DataFlavor;
import java.nio.file.Path;
import limberboard.desktop.parts.Copied;
import limberboard.desktop.read.LaidOutPassage.Cell;
import limberboard.desktop.read.LaidOutPassage.Heading;
import limberboard.desktop.read.LaidOutPassage.Item;
import limberboard.desktop.read.LaidOutText.Part;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LaidOutTextTest {
  @TempDir Path folder;
  private LaidOutText page;

  @BeforeEach
  void layOut() {
    page =
        new LaidPages(folder)
            .with("topics/all-sorts.md", LaidPages.ALL_SORTS)
            .laid("all-sorts", 420)
            .text();
  }

  private Part part(String words) {
    int at = page.text().indexOf(words);
    assertThat(at).as(words + " in: " + page.text()).isNotNegative();
    return new Part(at, at + words.length());
  }

  @Test
  void readsWithLineBreaksMarksAndTabs() {
    assertThat(page.plain(new Part(0, page.length())))
        .contains(
            "first, and then all of the rest, which goes on for longer than one line of the column"
                + " so that it is broken somewhere.\n\nSteps\n1. Look at the hose.\n2. Turn the"
                + " nut:\n  • by hand\n  • then by half a turn\n3. Look again.\n\nSizes\n"
                + "Hose\tClip\n19 mm\tsmall\n25 mm\tlarge");
  }

  @Test
  void knowsWhatEachPassageIs() {
    assertThat(page.passages())
        .filteredOn(passage -> passage.role() instanceof Heading)
        .extracting(passage -> page.plain(new Part(passage.start(), passage.end())))
        .contains("All sorts", "Steps", "Sizes");
    assertThat(page.passages()).filteredOn(p -> p.role() instanceof Item).hasSize(5);
    assertThat(page.passages()).filteredOn(p -> p.role() instanceof Cell).hasSize(6);
  }

  @Test
  void everyLetterLiesWhereItIsPainted() {
    Part word = part("somewhere");
    Rectangle box = page.boxes(word).get(0);
    assertThat(page.offsetAt(new Point(box.x, (int) box.getCenterY()))).isEqualTo(word.start());
    assertThat(page.offsetAt(new Point((int) box.getMaxX(), (int) box.getCenterY())))
        .isEqualTo(word.end());
    assertThat(page.wordAt(page.offsetAt(new Point((int) box.getCenterX(), box.y + 4))))
        .isEqualTo(word);
  }

  @Test
  void aPartOverSeveralLinesHasABoxInEach() {
    Part part = part("which goes on for longer than one line of the column so that it is broken");
    assertThat(page.boxes(part))
        .extracting(box -> box.y)
        .doesNotHaveDuplicates()
        .hasSizeGreaterThan(1);
  }

  @Test
  void aLinkIsFoundUnderThePointer() {
    Rectangle box = page.boxes(part("about the hose")).get(0);
    assertThat(page.linkAt(new Point((int) box.getCenterX(), (int) box.getCenterY())))
        .map(Link::address)
        .contains("page:tighten-hose");
    assertThat(page.linkAt(new Point(box.x, box.y + 400))).isEmpty();
  }

  @Test
  void copiesPlainAndAsHtml() throws Exception {
    Copied copied = CopiedPage.of(page, new Part(page.text().indexOf("Steps"), page.length()));
    assertThat(copied.getTransferData(DataFlavor.stringFlavor))
        .asString()
        .startsWith("Steps\n1. Look at the hose.\n2. Turn the nut:\n  • by hand")
        .endsWith("25 mm\tlarge");
    assertThat(copied.getTransferData(DataFlavor.allHtmlFlavor))
        .asString()
        .contains(
            "<h2>Steps</h2><ol><li>Look at the hose.</li><li>Turn the nut:<ul><li>by hand</li>"
                + "<li>then by half a turn</li></ul></li><li>Look again.</li></ol><h2>Sizes</h2>"
                + "<table><tr><th>Hose</th><th>Clip</th></tr><tr><td>19\u00a0mm</td><td>small</td>"
                + "</tr><tr><td>25\u00a0mm</td><td>large</td></tr></table>");
  }

  @Test
  void copiesStressesAndOnlyWhatIsSelected() {
    Part part = new Part(part("then all").start(), part("rest").end());
    assertThat(CopiedPage.of(page, part).html())
        .contains("<p>then <em>all</em> of the <strong>rest</strong></p>");
    assertThat(CopiedPage.of(page, part).plain()).isEqualTo("then all of the rest");
  }

  @Test
  void findsWordsOverTheEndsOfLinesWhateverTheirCapitals() {
    Finds finds = Finds.of(page, "ONE LINE OF  the column so that", 0);
    assertThat(finds.places()).hasSize(1);
    assertThat(page.boxes(finds.places().get(0))).isNotEmpty();
    Finds looks = Finds.of(page, "look", 0);
    assertThat(looks.words()).isEqualTo("1 of 2");
    assertThat(looks.step(1).words()).isEqualTo("2 of 2");
    assertThat(looks.step(1).step(1).words()).isEqualTo("1 of 2");
    assertThat(looks.step(-1).words()).isEqualTo("2 of 2");
    assertThat(Finds.of(page, "binnacle", 0).words()).isEqualTo("Not on this page");
    assertThat(Finds.of(page, "  ", 0).places()).isEmpty();
    assertThat(Finds.of(page, "(", 0).places()).isEmpty();
  }

  @Test
  void aSearchBeginsWhereOneIs() {
    int second = page.text().indexOf("Look again");
    assertThat(Finds.of(page, "look", second).words()).isEqualTo("2 of 2");
  }

  @Test
  void aSelectionGoesOnInTheSameTextAndEndsInAnother() {
    PageSelection selection = new PageSelection(() -> {});
    selection.in(page);
    selection.select(part("Look again."));
    selection.in(page);
    assertThat(selection.part()).isEqualTo(part("Look again."));
    selection.in(
        new LaidOutText("another text altogether", java.util.List.of(), java.util.List.of()));
    assertThat(selection.isEmpty()).isTrue();
  }
}
