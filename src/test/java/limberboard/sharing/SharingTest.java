package limberboard.sharing;

import static limberboard.sharing.SharedPair.PAGE;
import static limberboard.sharing.SharedPair.TEXT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import limberboard.history.GitRun;
import limberboard.history.HistoryTrouble;
import limberboard.library.value.Own;
import limberboard.sharing.merge.Conflict;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharingTest {
  @TempDir Path folder;
  private SharedPair pair;

  @BeforeEach
  void makePair() throws IOException {
    pair = new SharedPair(folder);
  }

  private void alike() throws IOException {
    pair.owner.push();
    pair.yard.pull();
    for (String path : List.of("articles", "boats")) {
      assertThat(files(pair.yard, path)).isEqualTo(files(pair.owner, path));
    }
    pair.yard.isSound();
    pair.owner.isSound();
  }

  private static List<String> files(SharedPair.Copy copy, String path) throws IOException {
    try (Stream<Path> files = Files.walk(copy.file(path))) {
      return files
          .filter(Files::isRegularFile)
          .map(
              file ->
                  copy.folders().relative(file) + "\n" + copy.read(copy.folders().relative(file)))
          .sorted()
          .toList();
    }
  }

  @Test
  void aCopyIsTheWholeWorkspaceAndGitFindsItSound() throws IOException {
    assertThat(files(pair.owner, "articles")).isEqualTo(files(pair.yard, "articles"));
    pair.owner.isSound();
    assertThat(pair.owner.pull()).isEqualTo(new PullOutcome.UpToDate(0, 0));
    assertThat(pair.owner.push()).isEqualTo(new Sending.Sent(0, 0));
  }

  @Test
  void changesOfDifferentPartsMergeAndWhatWasNotRecordedIsRecordedFirst() throws IOException {
    pair.yard.change(PAGE, "minutes: 5", "minutes: 8");
    pair.yard.change(PAGE, "Tie it.", "Tie it twice.");
    pair.yard.write("articles/topics/new.md", "---\ntitle: New\n---\n");
    pair.yard.push();
    pair.owner.change(PAGE, "title: Knots", "title: Bends");
    pair.owner.change(PAGE, "Pull it.", "Pull it hard.");
    PullOutcome outcome = pair.owner.pull();
    assertThat(outcome)
        .isEqualTo(
            new PullOutcome.Pulled(
                1, 1, List.of(PAGE, "articles/topics/new.md"), List.of(PAGE), List.of(), 2));
    assertThat(pair.owner.read(PAGE))
        .isEqualTo(
            TEXT.replace("Knots", "Bends")
                .replace("minutes: 5", "minutes: 8")
                .replace("Tie it.", "Tie it twice.")
                .replace("Pull it.", "Pull it hard."));
    alike();
    assertThat(pair.yard.git().run("log", "--format=%an", "-1", "HEAD^1").good()).isEqualTo("Bob");
  }

  @Test
  void nothingChangesUntilEverythingIsSettled() throws IOException {
    pair.yard.change(PAGE, "minutes: 5", "minutes: 8");
    pair.yard.change(PAGE, "Tie it.", "Tie it twice.");
    pair.yard.write("articles/topics/new.md", "---\ntitle: New\n---\n");
    pair.yard.push();
    pair.owner.change(PAGE, "minutes: 5", "minutes: 9");
    pair.owner.change(PAGE, "Tie it.", "Tie it loosely.");
    String before = pair.owner.read(PAGE);
    PullOutcome.Open open = (PullOutcome.Open) pair.owner.pull("knots:minutes=theirs", "kots=ours");
    assertThat(open.conflicts())
        .containsExactly(
            new Conflict(
                PAGE, "body-1", "Use", "Tie it.\n", "Tie it loosely.\n", "Tie it twice.\n"));
    assertThat(open.idle()).containsExactly("kots");
    assertThat(pair.owner.read(PAGE)).isEqualTo(before);
    assertThat(pair.owner.file("articles/topics/new.md")).doesNotExist();
    pair.owner.isSound();
    assertThat(pair.owner.pull("knots:minutes=theirs", "knots=both"))
        .isInstanceOf(PullOutcome.Pulled.class);
    assertThat(pair.owner.read(PAGE))
        .isEqualTo(
            TEXT.replace("minutes: 5", "minutes: 8")
                .replace("Tie it.\n", "Tie it loosely.\nTie it twice.\n"));
    alike();
  }

  @Test
  void aRenamedPageIsMergedUnderItsNewName() throws IOException {
    String renamed = "articles/topics/bends.md";
    Files.move(pair.yard.file(PAGE), pair.yard.file(renamed));
    pair.yard.push();
    pair.owner.change(PAGE, "Pull it.", "Pull it hard.");
    pair.owner.pull();
    assertThat(pair.owner.file(PAGE)).doesNotExist();
    assertThat(pair.owner.read(renamed)).isEqualTo(TEXT.replace("Pull it.", "Pull it hard."));
    alike();
  }

  @Test
  void aPageTakenAwayHereAndChangedThereIsChosen() throws IOException {
    Files.delete(pair.yard.file(PAGE));
    pair.yard.push();
    pair.owner.change(PAGE, "Pull it.", "Pull it hard.");
    PullOutcome.Open open = (PullOutcome.Open) pair.owner.pull();
    assertThat(open.conflicts()).hasSize(1);
    assertThat(open.conflicts().get(0).part()).isEqualTo(Conflict.PAGE);
    assertThat(open.conflicts().get(0).theirs()).isEmpty();
    pair.owner.pull("knots=ours");
    assertThat(pair.owner.read(PAGE)).contains("hard");
    alike();
  }

  @Test
  void logsAndCasesMergeWithoutAQuestion() throws IOException {
    String first = "boats/cases/2026-05-01-wet.yaml";
    pair.yard.change("boats/knot/log.csv", "launched,\n", "launched,\n2026-03-01,wash,yard\n");
    pair.yard.write(first, "symptom: wet\ncause: seal\n");
    pair.yard.push();
    pair.owner.change("boats/knot/log.csv", "launched,\n", "launched,\n2026-02-01,wax,mine\n");
    pair.owner.write(first, "symptom: wet\ncause: rain\n");
    assertThat(pair.owner.pull()).isInstanceOf(PullOutcome.Pulled.class);
    assertThat(pair.owner.read("boats/knot/log.csv").lines())
        .containsExactly(
            "date,work,note",
            "2026-01-01,launched,",
            "2026-02-01,wax,mine",
            "2026-03-01,wash,yard");
    assertThat(pair.owner.read(first)).contains("rain");
    assertThat(pair.owner.read("boats/cases/2026-05-01-wet-2.yaml")).contains("seal");
    alike();
  }

  @Test
  void picturesThatBothChangedAreChosenAsAWhole() throws IOException {
    String picture = "articles/pictures/a.png";
    byte[] base = {0, 1, 2};
    Files.write(pair.yard.file(picture), base);
    pair.yard.push();
    pair.owner.pull();
    Files.write(pair.yard.file(picture), new byte[] {0, 1, 3});
    pair.yard.push();
    Files.write(pair.owner.file(picture), new byte[] {0, 1, 4, 5});
    PullOutcome.Open open = (PullOutcome.Open) pair.owner.pull();
    assertThat(open.conflicts().get(0).ours()).isEqualTo("(4 bytes, no text)");
    pair.owner.pull("a.png=theirs");
    assertThat(pair.owner.file(picture)).hasBinaryContent(new byte[] {0, 1, 3});
    alike();
  }

  /** A page that the owner wrote and the yard has. */
  private String owners(String text) throws IOException {
    String notes = "articles/topics/notes.md";
    pair.owner.write(notes, text);
    pair.owner.push();
    pair.yard.pull();
    return notes;
  }

  @Test
  void anOwnersOwnPageSurvivesWhateverTheYardDoesToIt() throws IOException {
    String text = "---\ntitle: Notes\nown: owner\n---\nShe drips.\n";
    String notes = owners(text);
    Files.delete(pair.yard.file(notes));
    pair.yard.change(PAGE, "Tie it.", "Tie it twice.");
    pair.yard.push();
    PullOutcome.Pulled pulled = (PullOutcome.Pulled) pair.owner.pull();
    assertThat(pulled.kept()).containsExactly(notes);
    assertThat(pair.owner.read(notes)).isEqualTo(text);
    assertThat(pair.owner.read(PAGE)).contains("twice");
    alike();
    pair.yard.change(notes, "She drips.", "She does not.");
    pair.yard.push();
    pair.owner.change(notes, "drips", "drips badly");
    assertThat(((PullOutcome.Pulled) pair.owner.pull()).kept()).containsExactly(notes);
    assertThat(pair.owner.read(notes)).contains("She drips badly.");
  }

  @Test
  void aPageStaysItsOwnersThoughItsHeaderIsBroken() throws IOException {
    String text = "---\ntitle: [Notes\nown: owner\n---\nShe drips.\n";
    String notes = owners(text);
    pair.yard.change(notes, "She drips.", "She does not.");
    pair.yard.push();
    assertThat(((PullOutcome.Pulled) pair.owner.pull()).kept()).containsExactly(notes);
    assertThat(pair.owner.read(notes)).isEqualTo(text);
  }

  @Test
  void aPageIsNobodysOwnForWhatItsTextSays() throws IOException {
    String notes = owners("---\ntitle: [Notes\n---\nShe drips.\n\nown: owner\n");
    pair.yard.change(notes, "She drips.", "She does not.");
    pair.yard.push();
    assertThat(((PullOutcome.Pulled) pair.owner.pull()).kept()).isEmpty();
    assertThat(pair.owner.read(notes)).contains("She does not.");
  }

  @Test
  void anOwnersSecondCopyTakesWhatTheFirstWrote() throws IOException {
    String notes = "articles/topics/notes.md";
    pair.owner.write(notes, "---\ntitle: Notes\nown: owner\n---\nShe drips.\n");
    pair.owner.push();
    SharedPair.Copy second = pair.copy("second", SharedPair.BOB, Own.OWNER);
    second.change(notes, "drips", "drips aft");
    second.push();
    assertThat(((PullOutcome.Pulled) pair.owner.pull()).kept()).isEmpty();
    assertThat(pair.owner.read(notes)).contains("drips aft");
  }

  @Test
  void nothingIsSentOverWhatWasNotPulled() throws IOException {
    pair.yard.change(PAGE, "Tie", "Bind");
    pair.yard.push();
    pair.owner.change(PAGE, "Look", "Stare");
    assertThatThrownBy(pair.owner::push)
        .isInstanceOfSatisfying(
            HistoryTrouble.class,
            trouble -> {
              assertThat(trouble.wrong()).contains("has versions that you have not pulled");
              assertThat(trouble.right()).contains("share pull first");
            });
    pair.owner.pull();
    assertThat(pair.owner.push().versions()).isEqualTo(2);
  }

  @Test
  void aRemoteThatWasRewrittenIsNotMergedUnasked() throws IOException {
    pair.yard.change(PAGE, "Tie", "Bind");
    pair.yard.push();
    pair.owner.pull();
    pair.yard.git().run("reset", "-q", "--hard", "HEAD^").good();
    pair.yard.change(PAGE, "Look", "Stare");
    pair.yard.record("Another way");
    pair.yard.git().run("push", "-q", "--force", "origin", "main").good();
    for (int i = 0; i < 2; i++) {
      assertThatThrownBy(pair.owner::pull)
          .isInstanceOf(HistoryTrouble.class)
          .hasMessageContaining("was rewritten");
    }
    assertThat(pair.owner.read(PAGE)).doesNotContain("Stare");
    pair.owner.pull(SharedPair.connection(HowFar.silent()), true);
    assertThat(pair.owner.read(PAGE)).contains("Bind", "Stare");
    alike();
  }

  @Test
  void aRemoteThatIsNotThereIsSaidWithTheWayOn() throws IOException {
    pair.owner.git().run("remote", "set-url", "origin", folder.resolve("gone").toString()).good();
    pair.owner.change(PAGE, "Tie", "Bind");
    assertThatThrownBy(pair.owner::pull)
        .isInstanceOfSatisfying(
            HistoryTrouble.class,
            trouble -> assertThat(trouble.wrong()).contains("no repository at"));
    assertThat(pair.owner.read(PAGE)).contains("Bind");
    pair.owner.git().run("remote", "set-url", "origin", "https://127.0.0.1:1/x.git").good();
    assertThatThrownBy(pair.owner::pull)
        .isInstanceOf(HistoryTrouble.class)
        .hasMessageContaining("cannot be reached");
    pair.owner.isSound();
  }

  @Test
  void linksAndStrangePathsOfARemoteAreRefused() throws IOException {
    Path clone = folder.resolve("clone");
    pair.yard.git().run("clone", "-q", pair.remote.toString(), clone.toString()).good();
    Path link = clone.resolve("articles/topics/link.md");
    Files.createSymbolicLink(link, Path.of("/etc/passwd"));
    GitRun git = new GitRun(clone);
    git.run("add", "-A").good();
    git.run("commit", "-q", "-m", "A link").good();
    git.run("push", "-q", "origin", "HEAD:main").good();
    Files.delete(link);
    assertThatThrownBy(pair.owner::pull)
        .isInstanceOf(HistoryTrouble.class)
        .hasMessageContaining("is a link or another repository");
    assertThat(pair.owner.file("articles/topics/link.md")).doesNotExist();
    pair.owner.isSound();
  }

  private static String noise() {
    Random random = new Random(1);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 40_000; i++) {
      text.append(Long.toString(random.nextLong(), 36)).append("\n\n");
    }
    return text.toString();
  }

  /** Waits until nobody hands anything out any more. */
  private static void awaitTheOtherSide() {
    for (Thread thread : Thread.getAllStackTraces().keySet()) {
      if (thread.getName().contains("Upload-Pack")) {
        try {
          thread.join(TimeUnit.SECONDS.toMillis(30));
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
        }
      }
    }
  }

  @Test
  void aPullThatWasStoppedHasChangedNothingYet() throws IOException {
    pair.yard.change(PAGE, "Tie", "Bind");
    pair.yard.write("articles/topics/long.md", "---\ntitle: Long\n---\n" + noise());
    pair.yard.push();
    HowFar stopped =
        new HowFar() {
          @Override
          public void step(String what, int done, int total) {
            // tells nobody
          }

          @Override
          public boolean isStopped() {
            return true;
          }
        };
    PrintStream before = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
    try {
      assertThatThrownBy(() -> pair.owner.pull(SharedPair.connection(stopped), false))
          .isInstanceOf(HistoryTrouble.class)
          .hasMessage("stopped");
      awaitTheOtherSide();
    } finally {
      System.setErr(before);
    }
    assertThat(said.toString(StandardCharsets.UTF_8)).isEmpty();
    assertThat(pair.owner.read(PAGE)).isEqualTo(TEXT);
    pair.owner.pull();
    assertThat(pair.owner.read(PAGE)).contains("Bind");
  }

  @Test
  void copiesBegunApartMergeOnlyWhenAsked() throws IOException {
    pair.owner.git().run("checkout", "-q", "--orphan", "apart").good();
    pair.owner.git().run("commit", "-q", "-m", "Apart").good();
    pair.owner.git().run("branch", "-q", "-M", "apart", "main").good();
    pair.owner.write("articles/topics/mine.md", "---\ntitle: Mine\n---\n");
    assertThatThrownBy(pair.owner::pull).isInstanceOf(HistoryTrouble.class);
    assertThat(pair.owner.pull(SharedPair.connection(HowFar.silent()), true))
        .isInstanceOf(PullOutcome.Pulled.class);
    alike();
    assertThat(pair.yard.file("articles/topics/mine.md")).exists();
  }
}
