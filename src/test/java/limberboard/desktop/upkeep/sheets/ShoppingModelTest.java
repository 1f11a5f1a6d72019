package limberboard.desktop.upkeep.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.sheets.ShoppingModel.Offer;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.text.PlainText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ShoppingModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Steps steps = new Steps();
  private final UpkeepModel upkeep =
      new UpkeepModel(session, Steps.atOnce(), new WorkspaceFolders(Path.of("")));
  private final ShoppingModel model = new ShoppingModel(upkeep, steps.background());

  @BeforeEach
  void open() {
    session.replace(SmallWorkspace.read());
    model.sheet().attend(true);
    steps.all();
  }

  private Made made() {
    steps.all();
    return model.sheet().made().orElseThrow().sheet();
  }

  @Test
  void allWorkOfTheSeasonIsShoppedForAtFirst() {
    model.season(2028);
    assertThat(made().nothing()).isEmpty();
    assertThat(model.offers())
        .containsExactly(
            new Offer(
                "replace-gasket", "Replace the locker gasket", List.of(LocalDate.of(2028, 4, 10))));
    assertThat(model.isChosen("replace-gasket")).isTrue();
    assertThat(new PlainText().render(made().screen(), 100))
        .contains("1 × reel of 5 m")
        .contains("1.8 m");
    assertThat(new PlainText().render(made().paper().get(), 100)).contains("1 × reel of 5 m");
    assertThat(made().csv().get()).contains("gasket-strip");
    assertThat(made().name()).isEqualTo("shopping-knot-2028");
  }

  @Test
  void whatIsUntickedIsNotShoppedForAndStaysSoForThisBoatAndSeason() {
    model.season(2028);
    steps.all();
    model.choose("replace-gasket", false);
    assertThat(made().nothing()).startsWith("No work is chosen");
    assertThat(made().csv().get()).doesNotContain("gasket-strip");
    model.season(2026);
    steps.all();
    assertThat(model.offers()).isEmpty();
    assertThat(made().nothing()).startsWith("Nothing is planned for season 2026");
    session.choose(Optional.of("stint"));
    steps.all();
    session.choose(Optional.of("knot"));
    model.season(2028);
    steps.all();
    assertThat(model.isChosen("replace-gasket")).isFalse();
    model.chooseAll(true);
    assertThat(made().csv().get()).contains("gasket-strip");
    model.chooseAll(false);
    assertThat(model.isChosen("replace-gasket")).isFalse();
    assertThat(made().nothing()).startsWith("No work is chosen");
  }
}
