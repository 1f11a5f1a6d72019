package limberboard.desktop.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagesModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Memory memory = new Memory(new Forgetful());
  private final PagesModel model = new PagesModel(session, memory);

  private String title() {
    return model.page().map(Page::title).orElse("");
  }

  @Test
  void opensPagesGoesBackAndForwardAndRemembersTheLast() {
    session.replace(SmallWorkspace.read());
    model.open("replace-gasket");
    model.open("tighten-hose");
    model.back();
    assertThat(title()).isEqualTo("Replace the locker gasket");
    model.forward();
    assertThat(title()).isEqualTo("Tighten the drain hose");
    PagesModel next = new PagesModel(session, memory);
    assertThat(next.page().map(Page::id)).contains("tighten-hose");
  }

  @Test
  void aPageThatIsNotThereIsNotOpened() {
    session.replace(SmallWorkspace.read());
    model.open("replace-gasket");
    model.open("nowhere");
    assertThat(title()).isEqualTo("Replace the locker gasket");
    assertThat(model.canGoBack()).isFalse();
  }

  @Test
  void beforeTheLibraryIsReadThereIsNoPageAndAfterwardsTheOneOfLastTime() {
    memory.remember("page", "torch");
    PagesModel early = new PagesModel(session, memory);
    assertThat(early.page()).isEmpty();
    assertThat(early.isRead()).isFalse();
    session.replace(SmallWorkspace.read());
    assertThat(early.page().map(Page::id)).contains("torch");
  }

  @Test
  void goesBackToThePlaceOfTheWindowThatOneCameFrom() {
    session.replace(SmallWorkspace.read());
    List<String> shown = new ArrayList<>();
    model.onPlace(shown::add);
    model.open("torch");
    model.wentTo("upkeep");
    model.open("replace-gasket");
    model.wentTo("pages");
    model.back();
    assertThat(shown).last().isEqualTo("upkeep");
    assertThat(title()).isEqualTo("Torch");
    model.wentTo("upkeep");
    model.back();
    assertThat(shown).last().isEqualTo("pages");
    assertThat(title()).isEqualTo("Torch");
    model.forward();
    model.forward();
    assertThat(title()).isEqualTo("Replace the locker gasket");
  }

  @Test
  void aBrokenPageSaysWhatIsWrongWithItUntilItIsMended(@TempDir Path folder) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    model.open("tighten-hose");
    assertThat(model.broken()).isEmpty();
    Path page = folders.articles().resolve("procedures/tighten-hose.md");
    String whole = Files.readString(page);
    Files.writeString(page, whole.replace("title:", "title: ["));
    session.replace(SmallWorkspace.read(folders));
    assertThat(model.page()).isEmpty();
    assertThat(model.broken().orElseThrow().file())
        .isEqualTo("articles/procedures/tighten-hose.md");
    assertThat(model.works("articles/procedures/tighten-hose.md")).isFalse();
    Files.writeString(page, whole);
    session.replace(SmallWorkspace.read(folders));
    assertThat(title()).isEqualTo("Tighten the drain hose");
    assertThat(model.broken()).isEmpty();
  }

  @Test
  void aSymptomThatFitsTheBoatCanBeTracedAndOthersSayWhyNot() {
    session.replace(SmallWorkspace.read());
    model.open("gas-smell");
    assertThat(model.canTrace()).isTrue();
    session.choose(Optional.of("stint"));
    assertThat(model.canTrace()).isFalse();
    assertThat(model.fit().orElseThrow().reason()).contains("gas");
    session.choose(Optional.of("knot"));
    model.open("replace-gasket");
    assertThat(model.canTrace()).isFalse();
  }

  @Test
  void problemsSayWhereTheyAreAndTheRestOfTheLibraryStays(@TempDir Path folder) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Path page = folders.articles().resolve("procedures/tighten-hose.md");
    Files.writeString(page, Files.readString(page).replace("minutes: 20", "minuets: 20"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(model.problems()).isNotEmpty();
    assertThat(model.problems().get(0).file()).isEqualTo("articles/procedures/tighten-hose.md");
    model.open("replace-gasket");
    assertThat(title()).isEqualTo("Replace the locker gasket");
    assertThat(model.problemsOfPage())
        .allSatisfy(problem -> assertThat(problem.file()).endsWith("replace-gasket.md"));
    model.showProblems(true);
    assertThat(model.problemsShown()).isTrue();
    model.open("torch");
    assertThat(model.problemsShown()).isFalse();
  }
}
