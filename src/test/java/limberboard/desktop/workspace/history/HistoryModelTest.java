package limberboard.desktop.workspace.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The history of a page without its window. */
class HistoryModelTest {
  private static final Author ADA = new Author("Ada", "ada@example.org");
  private static final String TEXT =
      "---\n"
          + "title: Knots\n"
          + "summary: Ties.\n"
          + "---\n"
          + "# Use\n\n"
          + "Tie it.\n\n"
          + "Pull it.\n\n"
          + "| a | b |\n"
          + "| --- | --- |\n"
          + "| 1 | 2 |\n"
          + "| 3 | 4 |\n";
  @TempDir Path folder;
  private final Notices notices = new Notices();
  private WorkspaceFolders folders;
  private Path page;
  private Session session;
  private WhoRecords who;
  private HistoryModel model;

  @BeforeEach
  void open() throws IOException {
    folders = NewWorkspace.in(folder.resolve("yard"));
    page = folders.articles().resolve("topics/knots.md");
    Files.writeString(page, TEXT);
    session = new Session(Clock.systemDefaultZone(), Optional.empty());
    session.replace(new WorkspaceReader(folders).read());
    who = new WhoRecords(new Memory(new Forgetful()));
    Background direct = new Background(Runnable::run, Runnable::run, new Activity(), notices);
    model =
        new HistoryModel(
            new HistoryOutside(
                () -> folders,
                session,
                direct,
                Guard.NONE,
                notices,
                who,
                ZoneId.systemDefault(),
                Runnable::run,
                () -> {}));
  }

  private void change(String old, String now, String said) throws IOException {
    Files.writeString(page, Files.readString(page).replace(old, now));
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      Recorder recorder = new Recorder(place);
      recorder.record(recorder.unrecorded(), said, ADA);
    }
  }

  private List<String> said() {
    return model.versions().orElseThrow().entries().stream()
        .map(each -> each.version().said())
        .toList();
  }

  private static List<Part> of(CutPage sheet, Part.Role role) {
    return sheet.parts().stream().filter(part -> part.role() == role).toList();
  }

  private static String words(CutPage sheet) {
    return new PlainText().render(sheet, 100);
  }

  @Test
  void aWorkspaceWithoutAHistoryIsOfferedOne() {
    model.open("knots");
    assertThat(model.stage()).isEqualTo(HistoryStage.NO_HISTORY);
    model.begin();
    assertThat(folder.resolve("yard/.git")).as("nobody said who records").doesNotExist();
    who.askedBy(proposed -> Optional.of(ADA));
    model.begin();
    assertThat(model.stage()).isEqualTo(HistoryStage.READ);
    assertThat(said()).containsExactly("Begin the history");
  }

  @Test
  void saysWhatEachVersionChangedAsText() throws IOException {
    Beginning.begin(folders, ADA);
    change("Pull it.", "Pull it hard.", "Say how hard");
    change("summary: Ties.", "summary: Two ropes in one.", "A better summary");
    change("| 3 | 4 |", "| 3 | 5 |", "Put a figure right");
    model.open("knots");
    assertThat(said())
        .containsExactly(
            "Put a figure right", "A better summary", "Say how hard", "Begin the history");
    CutPage row = model.sheet().orElseThrow();
    assertThat(words(row)).contains("3", "5").doesNotContain("Pull it");
    assertThat(of(row, Part.Role.ADDED).get(0).title()).isEqualTo("Added below “Use”");
    assertThat(of(row, Part.Role.ADDED).get(0).blocks().get(0))
        .as("a row is still a row of a table")
        .isInstanceOf(limberboard.print.page.Block.Table.class);

    model.choose(model.versions().orElseThrow().entries().get(1));
    assertThat(of(model.sheet().orElseThrow(), Part.Role.CHANGED_KEYS)).hasSize(1);
    assertThat(words(model.sheet().orElseThrow())).contains("Ties.").contains("Two ropes in one.");

    model.choose(model.versions().orElseThrow().entries().get(2));
    CutPage paragraph = model.sheet().orElseThrow();
    assertThat(of(paragraph, Part.Role.TAKEN_OUT).get(0).title())
        .isEqualTo("Taken out below “Use”");
    assertThat(of(paragraph, Part.Role.ADDED).get(0).blocks().toString()).contains("Pull it hard.");
    assertThat(of(paragraph, Part.Role.BODY).toString()).contains("Tie it.");
  }

  @Test
  void everySheetSaysFirstThatItIsToCompare() throws IOException {
    Beginning.begin(folders, ADA);
    model.open("knots");
    for (VersionLook look : VersionLook.values()) {
      model.look(look);
      assertThat(model.sheet().orElseThrow().parts().get(0).role()).isEqualTo(Part.Role.NOTICE);
      assertThat(words(model.sheet().orElseThrow())).contains("not to work by");
    }
  }

  @Test
  void showsThePageAsItStoodOnADay() throws IOException {
    Beginning.begin(folders, ADA);
    model.open("knots");
    assertThat(model.on(LocalDate.of(2001, 1, 1)))
        .contains("The page was not there on 1 January 2001.");
    assertThat(model.on(LocalDate.now())).isEmpty();
    assertThat(model.look()).isEqualTo(VersionLook.THEN);
    assertThat(words(model.sheet().orElseThrow())).contains("Pull it.");
  }

  @Test
  void restoringIsANewVersionAndKeepsWhatStoodThere() throws IOException {
    Beginning.begin(folders, ADA);
    change("Pull it.", "Let it go.", "Let go");
    Files.writeString(page, Files.readString(page).replace("Let it go.", "Cut it."));
    who.askedBy(proposed -> Optional.of(ADA));
    model.open("knots");
    assertThat(model.versions().orElseThrow().unrecorded()).isTrue();
    model.choose(model.versions().orElseThrow().entries().get(1));
    model.restore();
    assertThat(Files.readString(page)).isEqualTo(TEXT);
    assertThat(said()).hasSize(4);
    assertThat(said().get(0)).startsWith("Restore knots as it was on ");
    assertThat(said().get(1)).isEqualTo("As it stood before restoring knots");
    assertThat(notices.current().orElseThrow().text()).contains("kept as a version");
    assertThat(model.canRestore()).as("it is the last version already").isFalse();
  }

  @Test
  void whatCannotBeReadIsSaidWithTheWayOn() throws IOException {
    Beginning.begin(folders, ADA);
    model.open("nots");
    assertThat(model.stage()).isEqualTo(HistoryStage.TROUBLE);
    assertThat(model.trouble()).contains("there is no page \"nots\"").contains("knots");
  }
}
