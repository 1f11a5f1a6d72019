package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.look.Palette;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.print.picture.Pictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageRendererTest {
  @TempDir Path folder;

  private static ScreenStyle style(int percent) {
    Map<Palette, String> colours = new EnumMap<>(Palette.class);
    for (Palette colour : Palette.values()) {
      colours.put(colour, "#123456");
    }
    return new ScreenStyle(colours, percent);
  }

  private PageRenderer.Order order(WorkspaceFolders folders, String page, boolean cut) {
    Workspace workspace = SmallWorkspace.read(folders);
    Page<?> found = workspace.library().page(page).orElseThrow();
    Optional<Fitting> boat =
        workspace.boat("knot").filter(b -> cut).map(b -> new Fitting(b, SmallWorkspace.TODAY));
    return new PageRenderer.Order(workspace.library(), found, boat, false);
  }

  @Test
  void everyPageIsLaidOutWithItsPicturesRead() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    PageRenderer renderer = new PageRenderer(Pictures.in(folders));
    for (Page<?> page : SmallWorkspace.read(folders).library().pages()) {
      Rendered rendered = renderer.screen(order(folders, page.id(), true), false, style(100));
      assertThat(rendered.document().getElementsByTagName("h1").getLength()).isEqualTo(1);
      assertThat(rendered.spoken()).contains(page.title());
    }
    Rendered gasket = renderer.screen(order(folders, "replace-gasket", true), false, style(100));
    assertThat(gasket.pictures()).containsOnlyKeys("articles/pictures/hose.svg");
  }

  @Test
  void theScreenAddsItsColoursAndTextSize() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Rendered rendered =
        new PageRenderer(Pictures.in(folders))
            .screen(order(folders, "torch", true), true, style(200));
    String styles = rendered.document().getElementsByTagName("style").item(1).getTextContent();
    assertThat(styles).contains("#123456", "font-size: 31.0px", "max-width: 1280px");
    assertThat(styles).doesNotContainPattern("[A-Z]{3,}");
  }

  @Test
  void forAllBoatsNothingIsLeftOut() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    PageRenderer renderer = new PageRenderer(Pictures.in(folders));
    String cut =
        renderer.screen(order(folders, "replace-gasket", true), false, style(100)).spoken();
    String whole =
        renderer.screen(order(folders, "replace-gasket", false), false, style(100)).spoken();
    assertThat(cut).doesNotContain("Leave the strip open under the vent");
    assertThat(whole).contains("Leave the strip open under the vent");
  }

  @Test
  void aPictureIsFoundFromItsPageAndNeverOutsideTheArticles() {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    PagePictures pictures = new PagePictures(Pictures.in(folders));
    String page = "articles/models/dinghy.md";
    assertThat(pictures.drawing(page, "../pictures/dinghy-deck.svg", false)).isPresent();
    assertThat(pictures.drawing(page, "../pictures/dinghy-deck.svg", true)).isPresent();
    assertThat(pictures.drawing(page, "../pictures/gone.svg", false)).isEmpty();
    assertThat(pictures.drawing(page, "../../README.md", false)).isEmpty();
    assertThat(pictures.picture(page, "../../../../../etc/hostname", false)).isEmpty();
  }
}
