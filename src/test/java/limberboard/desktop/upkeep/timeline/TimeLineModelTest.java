package limberboard.desktop.upkeep.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TimeLineModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Steps steps = new Steps();
  private final UpkeepModel upkeep =
      new UpkeepModel(session, Steps.atOnce(), new WorkspaceFolders(java.nio.file.Path.of("")));
  private final TimeLineModel model = new TimeLineModel(upkeep, steps.background());

  @BeforeEach
  void open() {
    session.replace(SmallWorkspace.read());
  }

  @Test
  void nothingIsDrawnWhileNobodyLooks() {
    assertThat(steps.waiting()).isZero();
    model.want(true, false);
    steps.all();
    assertThat(model.drawn().orElseThrow().line().rows())
        .extracting(row -> row.which().text())
        .containsExactly("replace-gasket");
    assertThat(model.drawn().orElseThrow().picture()).isPresent();
  }

  @Test
  void theSameIsDrawnOnceAndAnotherDayOrGroundAnew() {
    model.want(true, false);
    steps.all();
    model.want(false, false);
    model.want(true, false);
    assertThat(steps.waiting()).isZero();
    model.want(true, true);
    assertThat(steps.waiting()).isEqualTo(1);
    steps.all();
    upkeep.day(Optional.of(LocalDate.of(2029, 6, 1)));
    assertThat(steps.waiting()).isEqualTo(1);
    steps.all();
    assertThat(model.drawn().orElseThrow().line().on()).isEqualTo(LocalDate.of(2029, 6, 1));
  }

  @Test
  void nothingOfAnotherBoatStays() {
    model.want(true, false);
    steps.all();
    session.choose(Optional.empty());
    assertThat(model.drawn()).isEmpty();
  }
}
