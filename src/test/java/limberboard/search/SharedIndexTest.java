package limberboard.search;

import static limberboard.search.SmallSearchWorkspace.ids;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import limberboard.library.Library;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.Lock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several users of one index folder, and folders that cannot be written. */
class SharedIndexTest {
  @TempDir Path folder;
  private SmallSearchWorkspace workspace;

  @BeforeEach
  void fill() {
    workspace = SmallSearchWorkspace.filled(folder);
  }

  private SearchIndex impatient() {
    return new SearchIndex(
        workspace.folders(),
        () -> FSDirectory.open(workspace.folders().searchIndex()),
        Duration.ofMillis(60));
  }

  @Test
  void twoIndexesOnOneFolderSeeEachOthersUpdates() throws IOException {
    try (SearchIndex one = workspace.index();
        SearchIndex other = workspace.index()) {
      workspace.topic("paint", "Painting", "Two thin coats of enamel.");
      Library later = workspace.library();
      assertThat(one.update(later).added()).isEqualTo(1);
      assertThat(ids(other, "enamel")).as("the state it has seen").isEmpty();
      assertThat(other.update(later).unchanged()).as("already written").isTrue();
      assertThat(ids(other, "enamel")).containsExactly("paint");
    }
  }

  @Test
  void oneMayBuildTheIndexAnewWhileAnotherReads() throws IOException {
    try (SearchIndex reading = workspace.index()) {
      Path file = workspace.indexFiles().get(0);
      byte[] bytes = Files.readAllBytes(file);
      Files.delete(file);
      Files.write(file, new byte[bytes.length]);
      try (SearchIndex other = workspace.index()) {
        assertThat(ids(other, "wet bunk cushions")).first().isEqualTo("wet-bunk");
        assertThat(ids(reading, "wet bunk cushions")).first().isEqualTo("wet-bunk");
        workspace.topic("paint", "Painting", "Two thin coats of enamel.");
        reading.update(workspace.library());
        assertThat(ids(reading, "enamel")).containsExactly("paint");
      }
    }
  }

  @Test
  void whileAnotherKeepsWritingThisOneGoesOnInMemory() throws IOException {
    workspace.index().close();
    List<Path> before = workspace.indexFiles();
    try (SearchIndex index = impatient();
        Directory directory = FSDirectory.open(workspace.folders().searchIndex())) {
      try (Lock held = directory.obtainLock(IndexWriter.WRITE_LOCK_NAME)) {
        held.ensureValid();
        assertThat(index.update(workspace.library()).inMemory())
            .as("no lock is wanted without changes")
            .isEmpty();
        workspace.topic("paint", "Painting", "Two thin coats of enamel.");
        UpdateReport report = index.update(workspace.library());
        assertThat(report.added()).as("on top of what is on disk").isEqualTo(1);
        assertThat(report.inMemory())
            .hasValueSatisfying(why -> assertThat(why).contains("another"));
        assertThat(ids(index, "enamel")).containsExactly("paint");
        assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
        workspace.topic("varnish", "Varnishing", "Spar varnish.");
        assertThat(index.update(workspace.library()).added()).isEqualTo(1);
        assertThat(ids(index, "spar enamel")).contains("varnish", "paint");
        assertThat(workspace.indexFiles()).isEqualTo(before);
      }
      UpdateReport report = index.update(workspace.library());
      assertThat(report.inMemory()).as("the lock is free again").isEmpty();
      assertThat(report.added()).isEqualTo(2);
      assertThat(ids(index, "spar enamel")).contains("varnish", "paint");
    }
  }

  @Test
  void theLockIsWaitedForAWhile() throws Exception {
    workspace.index().close();
    workspace.topic("paint", "Painting", "Two thin coats of enamel.");
    Library library = workspace.library();
    ExecutorService other = Executors.newSingleThreadExecutor();
    try (SearchIndex index =
            new SearchIndex(
                workspace.folders(),
                () -> FSDirectory.open(workspace.folders().searchIndex()),
                Duration.ofMinutes(2));
        Directory directory = FSDirectory.open(workspace.folders().searchIndex())) {
      Lock held = directory.obtainLock(IndexWriter.WRITE_LOCK_NAME);
      Future<UpdateReport> update = other.submit(() -> index.update(library));
      Thread.sleep(200);
      assertThat(update.isDone()).isFalse();
      held.close();
      assertThat(update.get().inMemory()).isEmpty();
      assertThat(ids(index, "enamel")).containsExactly("paint");
    } finally {
      other.shutdownNow();
    }
  }

  @Test
  void aFolderThatCannotBeMadeIsDoneWithout() throws IOException {
    Files.createDirectories(folder.resolve("index"));
    Files.writeString(folder.resolve("index/lucene"), "a file where the folder should be");
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
      UpdateReport again = index.update(workspace.library());
      assertThat(again.unchanged()).isTrue();
      assertThat(again.inMemory()).isPresent();
      workspace.topic("paint", "Painting", "Two thin coats of enamel.");
      assertThat(index.update(workspace.library()).added()).isEqualTo(1);
      assertThat(ids(index, "enamel")).containsExactly("paint");
    }
    assertThat(folder.resolve("index/lucene")).isRegularFile();
  }

  @Test
  void aFolderThatIsOnlyReadableIsReadAndNeverWritten() throws IOException {
    workspace.index().close();
    SearchIndex.Place readOnly =
        () -> new FailingDirectory(FSDirectory.open(workspace.folders().searchIndex()), 0);
    try (SearchIndex index = new SearchIndex(workspace.folders(), readOnly, Duration.ZERO)) {
      UpdateReport report = index.update(workspace.library());
      assertThat(report.unchanged()).isTrue();
      assertThat(report.inMemory()).as("what is on disk will do").isEmpty();
      workspace.topic("paint", "Painting", "Two thin coats of enamel.");
      report = index.update(workspace.library());
      assertThat(report.added()).isEqualTo(1);
      assertThat(report.inMemory()).hasValueSatisfying(why -> assertThat(why).contains("No space"));
      assertThat(ids(index, "enamel")).containsExactly("paint");
    }
  }

  @Test
  void aDiskThatFillsUpAtAnyMomentLeavesTheOldIndexUsable() throws IOException {
    workspace.index().close();
    Library before = workspace.library();
    for (int i = 0; i < 30; i++) {
      workspace.topic("paint-" + i, "Painting " + i, "Two thin coats of enamel. ".repeat(20));
    }
    Library after = workspace.library();
    boolean failed = true;
    for (int writes = 0; failed; writes++) {
      int room = writes;
      SearchIndex.Place filling =
          () -> new FailingDirectory(FSDirectory.open(workspace.folders().searchIndex()), room);
      try (SearchIndex index = new SearchIndex(workspace.folders(), filling, Duration.ZERO)) {
        UpdateReport report = index.update(after);
        failed = report.inMemory().isPresent();
        assertThat(report.added()).isEqualTo(30);
        assertThat(ids(index, "enamel")).hasSize(20);
      }
      if (failed) {
        try (SearchIndex old = SearchIndex.open(workspace.folders())) {
          assertThat(ids(old, "wet bunk cushions")).first().isEqualTo("wet-bunk");
          assertThat(old.update(before).unchanged()).as("after %d writes", writes).isTrue();
        }
      } else {
        assertThat(writes).as("the disk was full several times").isGreaterThan(3);
      }
    }
  }

  @Test
  void queriesGoOnDuringUpdates() throws Exception {
    ExecutorService others = Executors.newFixedThreadPool(2);
    AtomicBoolean done = new AtomicBoolean();
    try (SearchIndex index = workspace.index()) {
      List<Future<Integer>> searches = new java.util.ArrayList<>();
      for (int i = 0; i < 2; i++) {
        searches.add(
            others.submit(
                () -> {
                  int answered = 0;
                  while (!done.get() || answered == 0) {
                    assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
                    answered++;
                  }
                  return answered;
                }));
      }
      for (int i = 0; i < 25; i++) {
        workspace.topic("paint", "Painting", "Coat number n" + i + "n.");
        index.update(workspace.library());
        assertThat(ids(index, "n" + i + "n")).containsExactly("paint");
      }
      done.set(true);
      for (Future<Integer> search : searches) {
        assertThat(search.get()).isPositive();
      }
    } finally {
      others.shutdownNow();
    }
  }
}
