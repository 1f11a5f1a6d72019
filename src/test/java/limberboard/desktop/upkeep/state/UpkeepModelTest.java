package limberboard.desktop.upkeep.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.state.UpkeepModel.State;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.Upkeep;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UpkeepModelTest {
  @TempDir Path folder;
  private final Session session = new Session(SmallWorkspace.clock(), Optional.empty());
  private final Steps steps = new Steps();
  private WorkspaceFolders folders;
  private UpkeepModel model;

  @BeforeEach
  void open() {
    folders = SmallWorkspace.copyTo(folder);
    model = new UpkeepModel(session, steps.background(), folders);
  }

  private void read() {
    session.replace(SmallWorkspace.read(folders));
    steps.all();
  }

  @Test
  void saysHowFarItHasCome() {
    assertThat(model.state()).isEqualTo(State.READING);
    read();
    assertThat(model.state()).isEqualTo(State.NO_BOAT);
    session.choose(Optional.of("knot"));
    assertThat(model.state()).isEqualTo(State.WORKING);
    steps.all();
    assertThat(model.state()).isEqualTo(State.READY);
    assertThat(model.upkeep().orElseThrow().fitting().boat().id()).isEqualTo("knot");
  }

  @Test
  void anotherDayIsWorkedOutAndTheOldStaysUntilThen() {
    read();
    session.choose(Optional.of("knot"));
    steps.all();
    Upkeep before = model.upkeep().orElseThrow();
    model.day(Optional.of(LocalDate.of(2029, 6, 1)));
    assertThat(model.upkeep()).contains(before);
    steps.all();
    Upkeep then = model.upkeep().orElseThrow();
    assertThat(then.fitting().on()).isEqualTo(LocalDate.of(2029, 6, 1));
    assertThat(then.of(Group.OVERDUE)).extracting(Due::id).contains("replace-gasket");
    model.day(Optional.empty());
    steps.all();
    assertThat(model.day()).isEqualTo(SmallWorkspace.TODAY);
  }

  @Test
  void nothingOfAnotherBoatIsShownMeanwhile() {
    read();
    session.choose(Optional.of("knot"));
    steps.all();
    session.choose(Optional.of("stint"));
    assertThat(model.upkeep()).isEmpty();
    session.choose(Optional.of("knot"));
    steps.last();
    steps.all();
    assertThat(model.upkeep().orElseThrow().fitting().boat().id()).isEqualTo("knot");
  }

  @Test
  void theSameIsNotWorkedOutTwice() {
    read();
    session.choose(Optional.of("knot"));
    steps.all();
    model.day(Optional.of(SmallWorkspace.TODAY));
    assertThat(steps.waiting()).isZero();
  }

  @Test
  void doubtfulLinesAreQuestionsWithFileAndLine() throws IOException {
    Files.writeString(
        folder.resolve("boats/knot/log.csv"),
        "date,work,engine-hours,note\n2027-01-01,launched,,\n2025-13-01,launched,,\n");
    read();
    session.choose(Optional.of("knot"));
    steps.all();
    assertThat(model.questions()).extracting(Problem::line).containsExactlyInAnyOrder(2, 3);
    assertThat(model.questions()).extracting(Problem::file).containsOnly("boats/knot/log.csv");
    session.choose(Optional.of("stint"));
    steps.all();
    assertThat(model.questions()).isEmpty();
  }
}
