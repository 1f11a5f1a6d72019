package limberboard.desktop.upkeep.sums;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import limberboard.workings.sums.Input;
import limberboard.workings.sums.Sums;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WorkingsModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final WorkingsModel model =
      new WorkingsModel(
          new UpkeepModel(session, Steps.atOnce(), new WorkspaceFolders(Path.of(""))),
          Sums.ofTheTrade());

  @BeforeEach
  void open() {
    session.replace(SmallWorkspace.read());
  }

  private Input first() {
    return model.form().sum().inputs().get(0);
  }

  @Test
  void whatWasTypedIsKeptForEachSumAndBoat() {
    model.choose("hole-inflow");
    model.form().type(first(), "33");
    model.choose("cable-size");
    model.choose("hole-inflow");
    assertThat(model.form().text(first())).isEqualTo("33");
    session.choose(Optional.of("stint"));
    assertThat(model.form().text(first())).isEqualTo("20");
    session.choose(Optional.of("knot"));
    assertThat(model.form().text(first())).isEqualTo("33");
    model.reset();
    assertThat(model.form().text(first())).isEqualTo("20");
  }

  @Test
  void anUnknownSumChangesNothing() {
    String before = model.chosen().id();
    model.choose("none");
    assertThat(model.chosen().id()).isEqualTo(before);
  }
}
