package limberboard.desktop.upkeep.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.boat.LogWriter;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.entry.EntryForm.Field;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogListModelTest {
  @TempDir Path folder;
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private WorkspaceFolders folders;
  private LogModel log;
  private LogListModel model;

  @BeforeEach
  void open() {
    folders = SmallWorkspace.copyTo(folder);
    UpkeepModel upkeep = new UpkeepModel(session, Steps.atOnce(), folders);
    log = new LogModel(session, LogStore.of(new LogWriter(folders)), Steps.atOnce());
    log.afterWriting(this::read);
    model = new LogListModel(upkeep, log);
    read();
  }

  private void read() {
    session.replace(SmallWorkspace.read(folders));
  }

  private String text() throws IOException {
    return Files.readString(folder.resolve("boats/knot/log.csv"));
  }

  @Test
  void theNewestStandsFirstInWords() {
    assertThat(model.rows())
        .containsExactly(
            new LogRow("12 April 2025", "Launched", "", "", ""),
            new LogRow("10 April 2024", "Replace the locker gasket", "", "", "with a new strip"));
  }

  @Test
  void theFilterWantsAllItsWordsAnywhereInTheLine() {
    model.filter("STRIP gasket");
    assertThat(model.rows()).extracting(LogRow::day).containsExactly("10 April 2024");
    model.filter("strip launched");
    assertThat(model.rows()).isEmpty();
    model.filter("  ");
    assertThat(model.rows()).hasSize(2);
  }

  @Test
  void anEventIsWrittenAndTakenOutAgain() throws IOException {
    String before = text();
    model.event("hauled-out");
    model.form().orElseThrow().set(Field.DAY, "2025-10-12");
    model.form().orElseThrow().set(Field.HOURS, "12.5");
    assertThat(model.canWrite()).isTrue();
    model.write();
    assertThat(text()).isEqualTo(before + "2025-10-12,hauled-out,12.5,\n");
    assertThat(model.rows().get(0))
        .isEqualTo(new LogRow("12 October 2025", "Hauled out", "12.5", "", ""));
    assertThat(model.form().orElseThrow().text(Field.HOURS)).isEmpty();
    log.undo();
    assertThat(text()).isEqualTo(before);
    assertThat(model.rows()).hasSize(2);
  }

  @Test
  void aReadingThatReadsNothingIsNotWritten() throws IOException {
    String before = text();
    model.event("reading");
    assertThat(model.canWrite()).isFalse();
    model.write();
    assertThat(text()).isEqualTo(before);
    model.form().orElseThrow().set(Field.HOURS, "14");
    assertThat(model.canWrite()).isTrue();
  }

  @Test
  void eachBoatKeepsItsHalfTypedForm() {
    model.event("launched");
    model.form().orElseThrow().set(Field.NOTE, "half");
    session.choose(Optional.of("stint"));
    assertThat(model.form().orElseThrow().text(Field.NOTE)).isEmpty();
    assertThat(model.rows()).isEmpty();
    session.choose(Optional.of("knot"));
    assertThat(model.form().orElseThrow().text(Field.NOTE)).isEqualTo("half");
    assertThat(model.form().orElseThrow().work()).isEqualTo("launched");
  }
}
