package limberboard.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageHistoryTest {
  private static final Author ADA = new Author("Ada", "ada@example.org");
  private static final String FIRST =
      "---\ntitle: Knots\nsystem: deck\n---\n# Use\n\nTie it.\n\nPull it tight.\n\nLook at it.\n";

  @TempDir Path folder;
  private WorkspaceFolders folders;
  private Path page;

  @BeforeEach
  void makeWorkspace() throws IOException {
    folders = NewWorkspace.in(folder.resolve("yard"));
    page = folders.articles().resolve("topics/knots.md");
    Files.writeString(page, FIRST);
  }

  private void record(String text, String said) throws IOException {
    Files.writeString(page, text);
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      Recorder recorder = new Recorder(place);
      assertThat(recorder.record(recorder.unrecorded(), said, ADA)).isPresent();
      assertThat(recorder.unrecorded()).isEmpty();
    }
  }

  @Test
  void isBegunOnceWithoutWhatIsBuiltOrOfOneDesk() throws IOException {
    assertThat(HistoryFolder.of(folders)).isEmpty();
    Files.createDirectories(folders.searchIndex());
    Files.writeString(folders.searchIndex().resolve("segments"), "built");
    Files.writeString(folders.root().resolve("index/searches"), "wet\n");
    Files.createDirectories(folders.letters());
    Files.writeString(folders.letters().resolve("senders"), "a@example.org\n");
    Files.writeString(folders.root().resolve(".gitignore"), "mine/");
    assertThat(Beginning.begin(folders, ADA)).isEqualTo(2);
    GitRun git = new GitRun(folders.root());
    assertThat(git.run("ls-files").good().lines())
        .containsExactly(".gitignore", "articles/topics/knots.md");
    assertThat(git.run("status", "--porcelain").good()).isEmpty();
    assertThat(git.run("fsck", "--strict").code()).isZero();
    assertThat(Files.readString(folders.root().resolve(".gitignore"))).startsWith("mine/\n");
    assertThatThrownBy(() -> Beginning.begin(folders, ADA))
        .isInstanceOf(HistoryTrouble.class)
        .hasMessageContaining("has a history already");
  }

  @Test
  void saysWhatEachVersionChangedAlsoUnderAnEarlierName() throws IOException {
    Beginning.begin(folders, ADA);
    record(FIRST.replace("title: Knots", "title: Bends"), "Say bends");
    Path renamed = page.resolveSibling("bends.md");
    Files.move(page, renamed);
    page = renamed;
    record(Files.readString(renamed), "Rename it");
    record(
        Files.readString(renamed).replace("Pull it tight.", "Pull hard.") + "\nCut it.\n", "Steps");
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      PageHistory history = new PageHistory(place);
      String path = history.find("bends");
      List<Version> versions = history.of(path);
      assertThat(versions)
          .extracting(Version::said)
          .containsExactly("Steps", "Rename it", "Say bends", "Begin the history");
      assertThat(versions)
          .extracting(Version::path)
          .containsExactly(
              "articles/topics/bends.md",
              "articles/topics/bends.md",
              "articles/topics/knots.md",
              "articles/topics/knots.md");
      assertThat(history.changes(versions, 0))
          .containsExactly("changed below “Use”", "added below “Use”");
      assertThat(history.changes(versions, 1))
          .containsExactly("renamed from articles/topics/knots.md");
      assertThat(history.changes(versions, 2)).containsExactly("title: Knots → Bends");
      assertThat(history.changes(versions, 3)).containsExactly("the page was begun");
      assertThat(history.text(versions.get(3))).contains(FIRST);
      assertThat(versions.get(0).who()).isEqualTo("Ada");
      assertThat(history.find("knots")).isEqualTo("articles/topics/bends.md");
      assertThatThrownBy(() -> history.find("bendz"))
          .isInstanceOfSatisfying(
              HistoryTrouble.class,
              trouble -> assertThat(trouble.right()).contains("did you mean \"bends\"?"));
    }
  }

  @Test
  void whatStoodOnADayIsTheLastVersionOfThatDay() throws IOException {
    Beginning.begin(folders, ADA);
    GitRun git = new GitRun(folders.root());
    Files.writeString(page, "later\n");
    git.run("add", "-A").good();
    git.run("commit", "-q", "-m", "Later", "--date", "2040-05-03T12:00:00+02:00").good();
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      PageHistory history = new PageHistory(place);
      List<Version> versions = history.of("articles/topics/knots.md");
      ZoneId zone = ZoneId.of("Europe/Paris");
      assertThat(PageHistory.on(versions, LocalDate.of(2040, 5, 3), zone))
          .contains(versions.get(0));
      assertThat(PageHistory.on(versions, LocalDate.of(2040, 5, 2), zone))
          .contains(versions.get(1));
      assertThat(PageHistory.on(versions, LocalDate.of(1999, 5, 2), zone)).isEmpty();
    }
  }

  @Test
  void restoringLosesNothingThatWasNotRecordedYet() throws IOException {
    Beginning.begin(folders, ADA);
    record(FIRST.replace("tight", "hard"), "Pull hard");
    Files.writeString(page, "half a thought");
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      PageHistory history = new PageHistory(place);
      List<Version> versions = history.of("articles/topics/knots.md");
      Restorer.Restored restored =
          new Restorer(place).restore("articles/topics/knots.md", versions.get(1), ADA);
      assertThat(page).hasContent(FIRST);
      assertThat(restored.kept()).isPresent();
      List<Version> now = history.of("articles/topics/knots.md");
      assertThat(now).hasSize(4);
      assertThat(history.text(now.get(1))).contains("half a thought");
      assertThat(history.text(now.get(0))).contains(FIRST);
      Optional<String> again =
          new Restorer(place).restore("articles/topics/knots.md", now.get(0), ADA).now();
      assertThat(again).isEmpty();
    }
    assertThat(new GitRun(folders.root()).run("status", "--porcelain").good()).isEmpty();
  }

  @Test
  void aPageThatWasTakenAwayIsFoundAndBroughtBack() throws IOException {
    Beginning.begin(folders, ADA);
    Files.delete(page);
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      Recorder recorder = new Recorder(place);
      recorder.record(recorder.unrecorded(), "Take it away", ADA);
      PageHistory history = new PageHistory(place);
      String path = history.find("knots");
      List<Version> versions = history.of(path);
      assertThat(history.changes(versions, 0)).containsExactly("the page was taken away");
      assertThatThrownBy(() -> new Restorer(place).restore(path, versions.get(0), ADA))
          .isInstanceOf(HistoryTrouble.class);
      new Restorer(place).restore(path, versions.get(1), ADA);
      assertThat(page).hasContent(FIRST);
      assertThat(history.changes(history.of(path), 0)).containsExactly("the page was put back");
    }
  }

  @Test
  void onlyWhatIsNamedIsRecordedWhateverElseWasMadeReady() throws IOException {
    Beginning.begin(folders, ADA);
    GitRun git = new GitRun(folders.root());
    Files.writeString(folders.root().resolve("notes.txt"), "somebody else's\n");
    Path other = Files.writeString(page.resolveSibling("other.md"), "Other.\n");
    git.run("add", "-A").good();
    Files.writeString(page, "changed\n");
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      Recorder recorder = new Recorder(place);
      assertThat(recorder.unrecorded())
          .containsExactly("articles/topics/knots.md", "articles/topics/other.md");
      recorder.record(List.of("articles/topics/knots.md"), "One", ADA);
    }
    assertThat(git.run("show", "--name-only", "--format=%s|%an|%ae").good().lines())
        .containsExactly("One|Ada|ada@example.org", "", "articles/topics/knots.md");
    assertThat(git.run("status", "--porcelain").good().lines())
        .containsExactly("A  articles/topics/other.md", "A  notes.txt");
    assertThat(other).exists();
  }

  @Test
  void aWorkspaceWithinARepositoryOfGitIsReadAsGitWroteIt() throws IOException {
    GitRun git = new GitRun(folder);
    git.run("init", "-q").good();
    Files.writeString(folder.resolve("readme.txt"), "outside\n");
    git.run("add", "-A").good();
    git.run("commit", "-q", "-m", "First").good();
    Files.writeString(page, FIRST.replace("Tie", "Bind"));
    git.run("commit", "-q", "-a", "-m", "Second").good();
    Files.writeString(folder.resolve("readme.txt"), "changed outside\n");
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      PageHistory history = new PageHistory(place);
      List<Version> versions = history.of(history.find("knots"));
      assertThat(versions).extracting(Version::said).containsExactly("Second", "First");
      assertThat(versions).extracting(Version::who).containsOnly("Tess");
      assertThat(versions.get(0).path()).isEqualTo("articles/topics/knots.md");
      assertThat(new Recorder(place).unrecorded()).isEmpty();
      assertThat(
              git.run("log", "--format=%H", "--", "yard/articles/topics/knots.md").good().lines())
          .containsExactlyElementsOf(versions.stream().map(Version::id).toList());
    }
  }

  @Test
  void whileGitIsInTheMiddleOfSomethingNothingIsRecorded() throws IOException {
    Beginning.begin(folders, ADA);
    GitRun git = new GitRun(folders.root());
    git.run("checkout", "-q", "-b", "side").good();
    record("one\n", "One");
    git.run("checkout", "-q", "main").good();
    record("two\n", "Two");
    assertThat(git.run("merge", "side").code()).isNotZero();
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      assertThatThrownBy(
              () -> new Recorder(place).record(List.of("articles/topics/knots.md"), "No", ADA))
          .isInstanceOf(HistoryTrouble.class)
          .hasMessageContaining("not finished");
    }
  }
}
