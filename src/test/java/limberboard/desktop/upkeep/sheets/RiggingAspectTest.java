package limberboard.desktop.upkeep.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.print.text.PlainText;
import limberboard.upkeep.Upkeep;
import org.junit.jupiter.api.Test;

class RiggingAspectTest {
  private static Made made(String boat) {
    Workspace workspace = SmallWorkspace.read();
    Fitting fitting = new Fitting(workspace.boat(boat).orElseThrow(), SmallWorkspace.TODAY);
    return RiggingAspect.make(workspace, Upkeep.of(workspace.library(), fitting), Optional.empty());
  }

  @Test
  void theRopesOfTheBoatStandOnTheSheetAndInTheTable() {
    Made made = made("knot");
    assertThat(made.nothing()).isEmpty();
    assertThat(made.name()).isEqualTo("rigging-knot");
    assertThat(new PlainText().render(made.screen(), 120))
        .contains("Main halyard")
        .contains("11 m");
    assertThat(made.csv().get().lines().skip(1))
        .singleElement(org.assertj.core.api.InstanceOfAssertFactories.STRING)
        .startsWith(
            "main-halyard,Main halyard,halyard,\"Headboard, masthead sheave, mast foot,"
                + " cleat\",1,11,11,11,6,polyester-braid");
  }

  @Test
  void aModelWithoutRopesSaysWhereTheyAreWritten() {
    assertThat(made("stint").nothing()).contains("names no ropes").contains("under ropes");
  }
}
