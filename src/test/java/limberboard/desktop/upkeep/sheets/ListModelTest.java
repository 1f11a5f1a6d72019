package limberboard.desktop.upkeep.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.text.PlainText;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.list.ListKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ListModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Steps steps = new Steps();
  private final UpkeepModel upkeep =
      new UpkeepModel(session, Steps.atOnce(), new WorkspaceFolders(Path.of("")));
  private final ListModel model = new ListModel(upkeep, steps.background());

  @BeforeEach
  void open() {
    session.replace(SmallWorkspace.read());
  }

  private Made made() {
    model.sheet().attend(true);
    steps.all();
    return model.sheet().made().orElseThrow().sheet();
  }

  private String text() {
    return new PlainText().render(made().screen(), 100).replace('\u00a0', ' ');
  }

  @Test
  void nothingIsWorkedOutWhileNobodyLooksAndTheSameIsWorkedOutOnce() {
    assertThat(steps.waiting()).isZero();
    model.sheet().attend(true);
    assertThat(steps.waiting()).isEqualTo(1);
    steps.all();
    model.sheet().attend(false);
    model.everything(true);
    assertThat(steps.waiting()).isZero();
    model.everything(false);
    model.sheet().attend(true);
    assertThat(steps.waiting()).isZero();
  }

  @Test
  void whatIsNotDueStandsOnTheListWhenEverythingIsAskedFor() {
    assertThat(made().nothing())
        .startsWith("Fitting out: nothing falls due for season 2026.")
        .contains("Also what is not due");
    model.everything(true);
    assertThat(made().nothing()).isEmpty();
    assertThat(text()).contains("Replace the locker gasket").contains("not before 10 Apr 2028");
    assertThat(made().name()).isEqualTo("fitting-out-knot-2026");
    assertThat(made().csv().get()).contains("replace-gasket");
    assertThat(new PlainText().render(made().paper().get(), 100))
        .contains("Replace the locker gasket");
  }

  @Test
  void aSeasonThatIsChosenIsKeptAndAnotherListBeginsWithItsUsualOne() {
    assertThat(model.seasons()).extracting(AfloatSeason::year).containsExactly(2026, 2027, 2028);
    model.season(2028);
    assertThat(model.year()).isEqualTo(2028);
    assertThat(text()).contains("Replace the locker gasket");
    assertThat(made().nothing()).isEmpty();
    model.kind(ListKind.LAYING_UP);
    assertThat(model.year()).isEqualTo(2026);
    assertThat(made().nothing()).startsWith("Laying up: nothing falls due");
    model.everything(true);
    assertThat(made().nothing()).contains("no page that fits this boat");
  }

  @Test
  void anotherDayAndAnotherBoatAreFollowed() {
    made();
    upkeep.day(Optional.of(LocalDate.of(2029, 6, 1)));
    steps.all();
    assertThat(model.year()).isEqualTo(2029);
    assertThat(made().screen().cutFor().replace('\u00a0', ' ')).contains("on 1 Jun 2029");
    session.choose(Optional.of("stint"));
    assertThat(model.sheet().made()).isEmpty();
    steps.all();
    assertThat(made().screen().title()).isEqualTo("Fitting out Stint");
    session.choose(Optional.empty());
    assertThat(model.sheet().made()).isEmpty();
    assertThat(model.seasons()).isEmpty();
  }
}
