package limberboard.sharing;

import static limberboard.sharing.SharedPair.PAGE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.RepositoryLock;
import limberboard.library.NewWorkspace;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pull that ends in the middle, wherever that is, is gone on with by the next. */
class KilledPullTest {
  private static final int PAGES = 6;

  @TempDir Path folder;
  private SharedPair pair;

  /** Ends everything when so many files have been written. */
  private record EndAt(int files) implements HowFar {
    @Override
    public void step(String what, int done, int total) {
      if (what.equals("Writing files") && done == files) {
        throw new Killed();
      }
    }
  }

  private static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  @BeforeEach
  void changeMuch() throws IOException {
    pair = new SharedPair(folder);
  }

  private static String page(int i) {
    return "articles/topics/page-" + i + ".md";
  }

  @Test
  void isGoneOnWithFromEveryFile() throws IOException {
    for (int i = 0; i < PAGES; i++) {
      pair.yard.write(page(i), "---\ntitle: Page " + i + "\n---\n");
      pair.yard.change(
          PAGE, i == 0 ? "minutes: 5" : "minutes: " + (99 + i), "minutes: " + (100 + i));
      pair.yard.push();
      pair.owner.write("articles/topics/mine.md", "---\ntitle: Mine " + i + "\n---\n");
      int end = i % 2;
      assertThatThrownBy(() -> pair.owner.pull(SharedPair.connection(new EndAt(end)), false))
          .isInstanceOf(Killed.class);
      pair.owner.pull();
      pair.owner.isSound();
      assertThat(pair.owner.read(PAGE)).contains("minutes: " + (100 + i));
      assertThat(pair.owner.read(page(i))).contains("Page " + i);
      assertThat(pair.owner.read("articles/topics/mine.md")).contains("Mine " + i);
    }
    assertThat(pair.owner.git().run("log", "--format=%s", "--first-parent").good().lines())
        .filteredOn("Merge what others changed"::equals)
        .hasSize(PAGES);
  }

  /** The yard changes a page and adds one, and the owner's pull ends with one of them written. */
  private void killedBetweenTwoFiles() throws IOException {
    pair.yard.change(PAGE, "minutes: 5", "minutes: 8");
    pair.yard.write(page(1), "---\ntitle: One\n---\n");
    pair.yard.push();
    pair.owner.write("articles/topics/mine.md", "---\ntitle: Mine\n---\n");
    assertThatThrownBy(() -> pair.owner.pull(SharedPair.connection(new EndAt(1)), false))
        .isInstanceOf(Killed.class);
  }

  @Test
  void whatWasWrittenBetweenIsMergedAndNotLost() throws IOException {
    killedBetweenTwoFiles();
    pair.owner.change(PAGE, "Look at it.", "Stare at it.");
    pair.owner.pull();
    assertThat(pair.owner.read(PAGE)).contains("minutes: 8", "Stare at it.");
    assertThat(pair.owner.read(page(1))).contains("One");
    pair.owner.isSound();
  }

  /** Else a page saved next makes all that was pulled look like this copy's own changes. */
  @Test
  void theNextOpeningBringsItToItsEndSoThatLaterChangesAreNoConflict() throws IOException {
    killedBetweenTwoFiles();
    CutShortPull cutShort = new CutShortPull(pair.owner.folders());
    assertThat(cutShort.finish()).isTrue();
    assertThat(cutShort.finish()).isFalse();
    pair.owner.isSound();
    pair.owner.change(page(1), "One", "One, renamed");
    pair.owner.change(PAGE, "Look at it.", "Stare at it.");
    pair.yard.change(PAGE, "minutes: 8", "minutes: 9");
    pair.yard.push();
    assertThat(pair.owner.pull()).isInstanceOf(PullOutcome.Pulled.class);
    assertThat(pair.owner.read(PAGE)).contains("minutes: 9", "Stare at it.");
    assertThat(pair.owner.read(page(1))).contains("One, renamed");
    pair.owner.isSound();
  }

  @Test
  void anOpeningLeavesAPullAloneThatAnotherProgramIsAt() throws IOException {
    pair.yard.change(PAGE, "minutes: 5", "minutes: 8");
    pair.yard.push();
    assertThatThrownBy(() -> pair.owner.pull(SharedPair.connection(new EndAt(0)), false))
        .isInstanceOf(Killed.class);
    CutShortPull cutShort = new CutShortPull(pair.owner.folders());
    try (HistoryFolder place = HistoryFolder.of(pair.owner.folders()).orElseThrow()) {
      RepositoryLock other = RepositoryLock.take(place.repository());
      try (other) {
        assertThat(cutShort.finish()).isFalse();
      }
    }
    assertThat(pair.owner.read(PAGE)).contains("minutes: 5");
    assertThat(cutShort.finish()).isTrue();
    assertThat(pair.owner.read(PAGE)).contains("minutes: 8");
  }

  @Test
  void aWorkspaceWithoutAHistoryHasNoPullToFinish() throws IOException {
    assertThat(new CutShortPull(NewWorkspace.in(folder.resolve("alone"))).finish()).isFalse();
  }

  @Test
  void locksThatAKilledProgramLeftAreTakenAway() throws IOException {
    Path git = pair.owner.file(".git");
    Files.writeString(git.resolve("limberboard.lock"), "busy");
    Files.writeString(git.resolve("index.lock"), "");
    Files.writeString(git.resolve("refs/heads/main.lock"), "");
    pair.owner.change(PAGE, "Tie", "Bind");
    pair.owner.record("Bind");
    pair.owner.isSound();
    Files.writeString(git.resolve("index.lock"), "");
    pair.owner.change(PAGE, "Bind", "Knot");
    assertThatThrownBy(() -> pair.owner.record("Knot")).hasMessageContaining("another program");
    Files.delete(git.resolve("index.lock"));
    pair.owner.record("Knot");
    pair.owner.isSound();
  }

  @Test
  void locksOfAPullOrPushThatWasKilledAreTakenAwayOnBothSides() throws IOException {
    Path git = pair.owner.file(".git");
    pair.yard.change(PAGE, "Tie", "Bind");
    pair.yard.push();
    Files.writeString(git.resolve("limberboard.lock"), "busy");
    Files.writeString(git.resolve("refs/remotes/origin/main.lock"), "");
    Files.createDirectories(git.resolve("refs/limberboard/seen/origin"));
    Files.writeString(git.resolve("refs/limberboard/seen/origin/main.lock"), "");
    assertThat(pair.owner.pull()).isInstanceOf(PullOutcome.Pulled.class);
    assertThat(pair.owner.read(PAGE)).contains("Bind");
    pair.owner.change(PAGE, "Bind", "Knot");
    Files.writeString(pair.remote.resolve("limberboard.lock"), "busy");
    Files.writeString(pair.remote.resolve("refs/heads/main.lock"), "");
    assertThat(pair.owner.push().versions()).isOne();
    pair.owner.isSound();
  }

  @Test
  void aPullIsNeverCalledUpToDateWhileGitHoldsTheNameOfWhatCame() throws IOException {
    pair.yard.change(PAGE, "Tie", "Bind");
    pair.yard.push();
    Path lock = pair.owner.file(".git/refs/remotes/origin/main.lock");
    Files.writeString(lock, "");
    assertThatThrownBy(pair.owner::pull).hasMessageContaining("git is working in this repository");
    Files.delete(lock);
    assertThat(pair.owner.pull()).isInstanceOf(PullOutcome.Pulled.class);
    Path other = pair.remote.resolve("refs/heads/main.lock");
    pair.owner.change(PAGE, "Bind", "Knot");
    Files.writeString(other, "");
    assertThatThrownBy(pair.owner::push)
        .isInstanceOfSatisfying(
            HistoryTrouble.class,
            trouble -> assertThat(trouble.right()).contains("refs/heads/main.lock"));
    Files.delete(other);
    assertThat(pair.owner.push().versions()).isOne();
  }

  @Test
  void aFolderThatMayNotBeWrittenIsSaidAndThePullGoesOnLater() throws IOException {
    Assumptions.assumeTrue(
        !"root".equals(System.getProperty("user.name")), "root may write every folder: not tried");
    pair.yard.write(page(1), "---\ntitle: One\n---\n");
    pair.yard.push();
    Path topics = pair.owner.file("articles/topics");
    assertThat(topics.toFile().setWritable(false)).isTrue();
    try {
      assertThatThrownBy(pair.owner::pull).hasMessageContaining("could not be written");
    } finally {
      assertThat(topics.toFile().setWritable(true)).isTrue();
    }
    pair.owner.pull();
    assertThat(pair.owner.read(page(1))).contains("One");
  }
}
