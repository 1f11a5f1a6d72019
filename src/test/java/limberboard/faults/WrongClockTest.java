package limberboard.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import limberboard.history.Beginning;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.history.PageHistory;
import limberboard.history.Recorder;
import limberboard.history.Version;
import limberboard.library.LibraryReader;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Own;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuery;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.Copying;
import limberboard.sharing.HowFar;
import limberboard.sharing.PullOutcome;
import limberboard.sharing.PullWish;
import limberboard.sharing.Sending;
import limberboard.sharing.Sharing;
import limberboard.writing.PageText;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clock that is wrong, or is set back, hides no change and loses none. */
class WrongClockTest {
  private static final String PAGE = "articles/topics/knots.md";
  private static final Instant DAY = Instant.parse("2026-05-01T10:00:00Z");

  @TempDir Path folder;

  private static String text(String word) {
    return "---\ntitle: " + word + "\n---\nText.\n";
  }

  private static void write(WorkspaceFolders folders, String word, Instant when)
      throws IOException {
    Path file = folders.root().resolve(PAGE);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text(word));
    Files.setLastModifiedTime(file, FileTime.from(when));
  }

  private static Clock at(Instant when) {
    return Clock.fixed(when, ZoneOffset.UTC);
  }

  @Test
  void aPageDatedInTheFutureIsReadAgainEachTime() throws IOException {
    WorkspaceFolders folders = NewWorkspace.in(folder);
    LibraryReader reader = new LibraryReader(folders);
    Instant future = Instant.now().plus(Duration.ofDays(400));
    try (SearchIndex index = SearchIndex.open(folders)) {
      for (String word : List.of("Bends", "Ropes", "Loops")) {
        write(folders, word, future);
        index.update(reader.read());
        assertThat(reader.read().page("knots").orElseThrow().title()).isEqualTo(word);
        assertThat(index.find(SearchQuery.of(word)).hits()).hasSize(1);
      }
    }
  }

  @Test
  void aPageWrittenWhileTheClockWasSetBackIsReadAndNotWrittenOver() throws IOException {
    WorkspaceFolders folders = NewWorkspace.in(folder);
    LibraryReader reader = new LibraryReader(folders);
    write(folders, "Bends", DAY);
    assertThat(reader.read().page("knots").orElseThrow().title()).isEqualTo("Bends");
    PageFile file = new PageFile(folders, PAGE);
    Optional<PageText> opened = ((PageFile.Ready) file.open()).page();
    write(folders, "Ropes", DAY.minus(Duration.ofDays(900)));
    assertThat(reader.read().page("knots").orElseThrow().title()).isEqualTo("Ropes");
    assertThat(file.save(opened, new PageText(text("Loops"))))
        .isInstanceOf(SaveOutcome.Changed.class);
    assertThat(folders.root().resolve(PAGE)).hasContent(text("Ropes"));
  }

  @Test
  void versionsRecordedWithAClockThatWentBackAreAllThereInTheirOrder() throws IOException {
    WorkspaceFolders folders = NewWorkspace.in(folder);
    write(folders, "Bends", DAY);
    Beginning.begin(folders, TriedWorks.ADA, at(DAY));
    write(folders, "Ropes", DAY.plusSeconds(60));
    record(folders, DAY.minus(Duration.ofDays(900)));
    write(folders, "Loops", DAY.plusSeconds(120));
    record(folders, DAY.minus(Duration.ofDays(901)));
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      PageHistory history = new PageHistory(place);
      List<Version> versions = history.of(PAGE);
      assertThat(versions).hasSize(3);
      assertThat(versions.get(0).when()).isBefore(versions.get(2).when());
    }
  }

  private static void record(WorkspaceFolders folders, Instant when) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      assertThat(new Recorder(place, at(when)).record(List.of(PAGE), "Change", TriedWorks.ADA))
          .isPresent();
    }
  }

  @Test
  void copiesWhoseClocksAreYearsApartMergeWithoutAQuestion() throws IOException {
    Path first = folder.resolve("first");
    WorkspaceFolders yard = NewWorkspace.in(first);
    write(yard, "Bends", DAY);
    Beginning.begin(yard, TriedWorks.ADA, at(DAY));
    Connection connection =
        new Connection(Asking.nobody(), List.of("ssh"), List.of(), HowFar.silent());
    String remote = folder.resolve("remote.git").toString();
    try (HistoryFolder place = HistoryFolder.of(yard).orElseThrow()) {
      new Sending(place, connection).push(TriedWorks.ADA, Optional.of(remote), true);
    }
    Path second = folder.resolve("second");
    new Copying(connection).copy(remote, second, new CopyRole(Own.OWNER));
    WorkspaceFolders owner = new WorkspaceFolders(second);
    for (int i = 0; i < 12; i++) {
      write(yard, "Bends" + i, DAY);
      record(yard, DAY.plus(Duration.ofDays(4000 - i)));
      Files.writeString(second.resolve(PAGE), text("Bends") + "\nMine " + i + ".\n");
      record(owner, DAY.minus(Duration.ofDays(4000 + i)));
    }
    try (HistoryFolder place = HistoryFolder.of(yard).orElseThrow()) {
      new Sending(place, connection).push(TriedWorks.ADA, Optional.empty(), false);
    }
    try (HistoryFolder place = HistoryFolder.of(owner).orElseThrow()) {
      PullOutcome outcome = new Sharing(place, connection).pull(PullWish.by(TriedWorks.ADA));
      assertThat(outcome).isInstanceOf(PullOutcome.Pulled.class);
      assertThat(((PullOutcome.Pulled) outcome).versions()).isEqualTo(12);
      new Sending(place, connection).push(TriedWorks.ADA, Optional.empty(), false);
    }
    assertThat(Files.readString(second.resolve(PAGE))).contains("Bends11", "Mine 11");
  }
}
