package limberboard.desktop.upkeep.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.RopedWorkspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.sheets.RiggingModel.RopeLine;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.AskedRope;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.text.PlainText;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RiggingModelTest {
  @TempDir private Path folder;
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final RiggingModel model =
      new RiggingModel(
          new UpkeepModel(session, Steps.atOnce(), new WorkspaceFolders(Path.of(""))),
          Steps.atOnce());
  private WorkspaceFolders folders;

  @BeforeEach
  void open() {
    folders = RopedWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    model.sheet().attend(true);
  }

  private Made made() {
    return model.sheet().made().orElseThrow().sheet();
  }

  private List<String> ticked() {
    return model.ticked().stream().map(RopeLine::id).toList();
  }

  @Test
  void theRopesOfTheBoatStandOnTheSheetAndInTheTable() {
    session.replace(SmallWorkspace.read());
    assertThat(made().nothing()).isEmpty();
    assertThat(made().name()).isEqualTo("rigging-knot");
    assertThat(new PlainText().render(made().screen(), 120))
        .contains("Main halyard")
        .contains("11 m");
    assertThat(made().csv().get().lines().skip(1))
        .singleElement(InstanceOfAssertFactories.STRING)
        .startsWith(
            "main-halyard,Main halyard,halyard,\"Headboard, masthead sheave, mast foot,"
                + " cleat\",1,11,11,11,6,polyester-braid");
  }

  @Test
  void aModelWithoutRopesSaysWhereTheyAreWritten() {
    session.choose(Optional.of("stint"));
    assertThat(made().nothing()).contains("names no ropes").contains("under ropes");
    assertThat(model.ropes()).isEmpty();
    assertThat(model.words()).isEqualTo("No rope is ticked.");
  }

  @Test
  void theRopesStandInTheListsOrderWithTheirCuts() {
    assertThat(model.ropes())
        .extracting(RopeLine::title, RopeLine::group, RopeLine::facts)
        .containsExactly(
            tuple("Main halyard", "Halyards and lifts", "11 m of 6 mm polyester, braid on braid"),
            tuple("Jib halyard", "", "The page of the Dinghy 18 gives no I: measure it"),
            tuple("Jib sheets", "Sheets", "2 × 6 m of 6 mm polyester, braid on braid"));
  }

  @Test
  void whatIsTickedIsCountedAndMeasured() {
    model.tick("jib-sheets", false);
    assertThat(model.words()).isEqualTo("1 rope ticked, 12 m in all.");
    model.tick("main-halyard", false);
    assertThat(model.words()).isEqualTo("2 ropes ticked, 23 m in all.");
    assertThat(model.asked())
        .containsExactly(
            new AskedRope("main-halyard", "Main halyard"),
            new AskedRope("jib-sheets", "Jib sheets"));
    model.tickAll();
    assertThat(model.words())
        .isEqualTo("3 ropes ticked, 23 m in all, without one of a length that is not known yet.");
    model.tick("main-halyard", false);
    model.tick("jib-sheets", false);
    assertThat(model.words()).isEqualTo("1 rope ticked, of a length that is not known yet.");
    model.clear();
    assertThat(ticked()).isEmpty();
  }

  @Test
  void aRangeIsTickedFromTheLastOneOn() {
    model.tick("jib-sheets", true);
    assertThat(ticked()).containsExactly("jib-sheets");
    model.tick("main-halyard", true);
    assertThat(ticked()).containsExactly("main-halyard", "jib-halyard", "jib-sheets");
  }

  @Test
  void eachBoatKeepsItsTicks() {
    model.tick("jib-sheets", false);
    session.choose(Optional.of("stint"));
    assertThat(ticked()).isEmpty();
    assertThat(model.gone()).isEmpty();
    session.choose(Optional.of("knot"));
    assertThat(ticked()).containsExactly("jib-sheets");
  }

  @Test
  void aRopeThatIsNotOnTheListAnyMoreIsDroppedAndNamed() {
    model.tick("jib-sheets", false);
    model.tick("main-halyard", false);
    RopedWorkspace.dropJibSheets(folders);
    session.replace(SmallWorkspace.read(folders));
    assertThat(ticked()).containsExactly("main-halyard");
    assertThat(model.asked()).containsExactly(new AskedRope("main-halyard", "Main halyard"));
    assertThat(model.words()).isEqualTo("1 rope ticked, 11 m in all.");
    assertThat(model.gone()).containsExactly("Jib sheets");
    model.tick("main-halyard", false);
    assertThat(model.gone()).isEmpty();
  }
}
