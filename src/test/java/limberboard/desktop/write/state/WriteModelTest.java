package limberboard.desktop.write.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.writing.form.FieldValue;
import limberboard.writing.save.KeptTexts;
import limberboard.writing.start.BegunPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the Write place knows, in step and without a display. */
class WriteModelTest {
  private static final String PAGE = "replace-gasket";
  @TempDir Path folder;
  private final Notices notices = new Notices();
  private final Background step =
      new Background(Runnable::run, Runnable::run, new Activity(), notices);
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final List<String> recorded = new ArrayList<>();
  private WorkspaceFolders folders;
  private WorkspaceReader reader;
  private WriteModel model;

  @BeforeEach
  void read() throws IOException {
    folders = SmallWorkspace.copyTo(folder.resolve("workspace"));
    reader = new WorkspaceReader(folders);
    readAgain();
    model = model();
  }

  /** A sitting of its own on the same workspace. */
  private WriteModel model() {
    Path state = folder.resolve("state");
    WriteModel made =
        new WriteModel(
            session,
            notices,
            new WriteOutside(
                folders,
                reader::typing,
                step,
                step,
                step,
                Runnable::run,
                Runnable::run,
                TextStore.of(new KeptTexts(new UserFolders(state, state, state), folders), folders),
                record(),
                () -> List.of(picture()),
                SmallWorkspace.clock(),
                Guard.NONE));
    made.saving().afterWriting(this::readAgain);
    return made;
  }

  private PageRecord record() {
    return new PageRecord() {
      @Override
      public boolean isThere() {
        return true;
      }

      @Override
      public Optional<String> author() {
        return Optional.of("Ada");
      }

      @Override
      public void record(Collection<String> paths, String said, String author) {
        recorded.add(author + ": " + said + " " + paths);
      }
    };
  }

  private Path picture() {
    Path file = folder.resolve("Lid Open.svg");
    try {
      Files.writeString(
          file, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"></svg>");
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return file;
  }

  private void readAgain() {
    try {
      session.replace(reader.read());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private OpenPage open() {
    model.open(PAGE);
    return model.current().orElseThrow();
  }

  private Path file(OpenPage page) {
    return folders.root().resolve(page.path());
  }

  private String notice() {
    return notices.current().map(Notices.Notice::text).orElse("");
  }

  @Test
  void aPageIsOpenedWithTheCaretAtTheHeadingThatWasRead() throws IOException {
    Path file = folders.articles().resolve("topics/two.md");
    Files.createDirectories(file.getParent());
    Files.writeString(file, "---\ntitle: Two\n---\n# One\nText.\n\n## *Two* ropes\nMore.\n");
    readAgain();
    model.open("two", Optional.of("Two ropes"));
    OpenPage page = model.current().orElseThrow();
    assertThat(page.text().plain()).startsWith("---\ntitle: Two");
    assertThat(page.text().plain().substring(page.caret())).startsWith("## *Two* ropes");
    assertThat(page.isChanged()).isFalse();
  }

  @Test
  void whatIsTypedIsLookedAtAndSavedAndSeenByTheLibrary() throws IOException {
    OpenPage page = open();
    String typed = page.text().plain() + "\nSee [nothing](../topics/no-such.md).\n";
    model.typed(page, typed);
    assertThat(page.problems()).hasSize(1);
    assertThat(page.problems().get(0).problem().wrong()).contains("no-such");
    model.typed(page, typed.replace("../topics/no-such.md", "../symptoms/wet-locker.md"));
    assertThat(page.problems()).isEmpty();
    model.saving().save(page);
    assertThat(page.isChanged()).isFalse();
    assertThat(Files.readString(file(page))).isEqualTo(page.text().text());
    assertThat(session.library().linksFrom(PAGE)).contains("wet-locker");
    assertThat(notice()).isEqualTo("Saved.");
  }

  @Test
  void whatASavedPageSaysIsHandedOnBeforeTheWorkspaceIsReadAgain() {
    List<String> handedOn = new ArrayList<>();
    model.saving().afterWriting(() -> handedOn.add("read again"));
    model
        .saving()
        .afterLooking(
            found ->
                handedOn.add(
                    found.read().page().orElseThrow().title()
                        + found.read().library().linksFrom(PAGE).contains("wet-locker")));
    OpenPage page = open();
    model.typed(page, page.text().plain() + "\nSee [wet](../symptoms/wet-locker.md).\n");
    model.saving().save(page);
    assertThat(handedOn).containsExactly(page.title() + true, "read again");
  }

  @Test
  void savingIsOfferedToBeRecordedWithEveryFileWrittenSince() {
    OpenPage page = open();
    model.typed(page, page.text().plain() + "More.\n");
    model.saving().save(page);
    assertThat(notices.current().orElseThrow().offers())
        .extracting(Notices.Offer::title)
        .containsExactly("Record it …");
    model.changes().putIn(page);
    model.saving().record("Say more", "Ada");
    assertThat(recorded).hasSize(1);
    assertThat(recorded.get(0))
        .startsWith("Ada: Say more")
        .contains(page.path(), "articles/pictures/lid-open.svg");
    assertThat(model.saving().unrecorded()).isEmpty();
  }

  @Test
  void aFieldOfTheHeaderAndTheTextAreInStep() {
    OpenPage page = open();
    HeaderChanges changes = new HeaderChanges(model, step);
    List<String> refused = new ArrayList<>();
    changes.set(page, "minutes", Optional.of(new FieldValue.Text("35")), refused::add);
    assertThat(page.text().plain()).contains("minutes: 35");
    assertThat(page.checked().orElseThrow().form().orElseThrow().value("minutes"))
        .contains(new FieldValue.Text("35"));
    model.typed(page, page.text().plain().replace("minutes: 35", "minutes: 40"));
    assertThat(page.checked().orElseThrow().form().orElseThrow().value("minutes"))
        .contains(new FieldValue.Text("40"));
    assertThat(refused).containsExactly("");
  }

  @Test
  void whatSomebodyElseHasWrittenIsNeverWrittenOverUnasked() throws IOException {
    OpenPage page = open();
    String theirs = Files.readString(file(page)) + "Theirs.\n";
    model.typed(page, page.text().plain() + "Mine.\n");
    Files.writeString(file(page), theirs);
    model.saving().save(page);
    assertThat(Files.readString(file(page))).isEqualTo(theirs);
    assertThat(page.clash().orElseThrow().differences()).hasSize(1);
    model.versions().take(page, page.clash().orElseThrow().differences().get(0));
    assertThat(page.text().text()).isEqualTo(theirs);
    assertThat(page.isChanged()).isFalse();
    assertThat(page.clash()).isEmpty();
  }

  @Test
  void mineGoesOverTheirsOnlyWhenThatIsAskedFor() throws IOException {
    OpenPage page = open();
    String mine = page.text().plain() + "Mine.\n";
    model.typed(page, mine);
    Files.writeString(file(page), "---\ntitle: Theirs\nskill: owner\nminutes: 1\n---\n");
    model.saving().save(page);
    model.versions().keepMine(page);
    assertThat(Files.readString(file(page))).isEqualTo(mine);
    assertThat(page.clash()).isEmpty();
  }

  @Test
  void aPageWithNothingUnsavedFollowsItsFileAndAnotherIsToldOf() throws IOException {
    OpenPage page = open();
    String theirs = Files.readString(file(page)) + "Theirs, which is longer.\n";
    Files.writeString(file(page), theirs);
    readAgain();
    assertThat(page.text().text()).isEqualTo(theirs);
    assertThat(page.isChanged()).isFalse();
    model.typed(page, theirs + "Mine.\n");
    Files.writeString(file(page), theirs + "Theirs again, longer still.\n");
    readAgain();
    assertThat(page.text().plain()).endsWith("Mine.\n");
    assertThat(page.clash()).isPresent();
    assertThat(notice()).contains("Somebody else has changed the file");
  }

  @Test
  void textThatIsNotSavedIsOfferedBackByTheNextSitting() throws IOException {
    OpenPage page = open();
    String typed = page.text().plain() + "Not saved.\n";
    model.typed(page, typed);
    WriteModel next = model();
    next.keeping().look();
    assertThat(next.keeping().left()).hasSize(1);
    next.restore(next.keeping().left().get(0));
    OpenPage back = next.current().orElseThrow();
    assertThat(back.text().plain()).isEqualTo(typed);
    assertThat(back.isChanged()).isTrue();
    assertThat(back.clash()).isEmpty();
    assertThat(next.keeping().left()).isEmpty();
    next.saving().save(back);
    assertThat(Files.readString(file(back))).isEqualTo(typed);
    WriteModel last = model();
    last.keeping().look();
    assertThat(last.keeping().left()).isEmpty();
  }

  @Test
  void textThatGoesOnFromAnOlderFileIsShownBesideTheNewOne() throws IOException {
    OpenPage page = open();
    model.typed(page, page.text().plain() + "Not saved.\n");
    Files.writeString(file(page), page.saved().orElseThrow().text() + "Theirs meanwhile.\n");
    WriteModel next = model();
    next.keeping().look();
    next.restore(next.keeping().left().get(0));
    assertThat(next.current().orElseThrow().clash()).isPresent();
  }

  @Test
  void aPageIsBegunSavedRenamedAndDeletedAndBroughtBack() throws IOException {
    BegunPage begun = BegunPage.of(Kind.TOPIC, "Bends", "bends");
    model.begin(begun);
    OpenPage page = model.current().orElseThrow();
    assertThat(page.isChanged()).isTrue();
    assertThat(file(page)).doesNotExist();
    model.saving().save(page);
    assertThat(session.library().page("bends")).isPresent();
    OpenPage other = open();
    model.typed(other, other.text().plain() + "\nSee [bends](../topics/bends.md).\n");
    assertThat(model.changes().hindered(page).orElseThrow()).contains(other.title());
    model.saving().save(other);
    List<Integer> lines = new ArrayList<>();
    model.changes().links(page, found -> found.forEach(each -> lines.add(each.line())));
    assertThat(lines).hasSize(1);
    model.changes().rename(page, "knots");
    assertThat(page.path()).isEqualTo("articles/topics/knots.md");
    assertThat(Files.readString(file(other))).contains("(../topics/knots.md)");
    assertThat(other.text().plain()).contains("(../topics/knots.md)");
    model.changes().delete(page);
    assertThat(file(page)).doesNotExist();
    assertThat(model.pages()).containsExactly(other);
    notices.current().orElseThrow().offers().get(0).action().run();
    assertThat(file(page)).exists();
  }

  @Test
  void aPictureIsCopiedBesideThePagesAndLinkedWhereTheCaretIs() {
    OpenPage page = open();
    page.goTo(page.text().plain().length(), page.text().plain().length());
    model.changes().putIn(page);
    assertThat(page.text().plain()).endsWith("![](../pictures/lid-open.svg)");
    assertThat(folders.articles().resolve("pictures/lid-open.svg")).exists();
    model.changes().putIn(page, List.of(folder.resolve("none.svg")));
    assertThat(notice()).contains("none.svg cannot be read");
  }

  @Test
  void droppingChangesGoesBackToWhatIsSaved() {
    OpenPage page = open();
    model.typed(page, "nonsense");
    model.closeSaved(page);
    assertThat(model.pages()).contains(page);
    assertThat(notice()).contains("not saved");
    model.throwAway(page);
    assertThat(page.isChanged()).isFalse();
    model.closeSaved(page);
    assertThat(model.pages()).isEmpty();
  }
}
