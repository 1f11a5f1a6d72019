package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.workings.QuantityWords;
import org.junit.jupiter.api.Test;

class PageFootTest {
  private final Library library = SmallWorkspace.read().library();

  @Test
  void knowsWhatPointsHereAndWhereThisPoints() {
    assertThat(PageFoot.pointHere(library, "tighten-hose"))
        .extracting(Page::id)
        .containsExactly("wet-locker", "replace-gasket");
    assertThat(PageFoot.pointsTo(library, "replace-gasket"))
        .extracting(Page::id)
        .containsExactly("tighten-hose", "gasket-strip", "torch");
  }

  @Test
  void bothStandAtTheFootOfThePageAndNothingElseChanges() {
    CutPage page =
        new PageCutter(library, QuantityWords.METRIC)
            .cut(library.page("replace-gasket").orElseThrow(), Optional.empty());
    CutPage footed = PageFoot.under(page, library);
    assertThat(footed.parts().subList(0, page.parts().size())).isEqualTo(page.parts());
    assertThat(footed.parts().subList(page.parts().size(), footed.parts().size()))
        .extracting(Part::title)
        .containsExactly("This page points to", "Which pages point here");
    assertThat(new PlainText().render(footed, 100)).contains("Tighten the drain hose");
  }
}
