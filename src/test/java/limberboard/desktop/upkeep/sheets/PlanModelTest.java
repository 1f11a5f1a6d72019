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
import limberboard.library.page.Page;
import limberboard.print.text.PlainText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Steps steps = new Steps();
  private final UpkeepModel upkeep =
      new UpkeepModel(session, Steps.atOnce(), new WorkspaceFolders(Path.of("")));
  private final PlanModel model = new PlanModel(upkeep, steps.background());

  @BeforeEach
  void open() {
    session.replace(SmallWorkspace.read());
    upkeep.day(Optional.of(LocalDate.of(2028, 3, 20)));
    model.sheet().attend(true);
    steps.all();
  }

  private Made made() {
    steps.all();
    return model.sheet().made().orElseThrow().sheet();
  }

  @Test
  void saysHowToBeginAndUntilWhenIsUsual() {
    assertThat(made().nothing()).startsWith("Write how many hours there are");
    assertThat(model.lines()).isEmpty();
    assertThat(model.usualUntil()).isPresent();
  }

  @Test
  void plansWhatIsDue() {
    model.ask(new PlanModel.Ask("4", "30 April 2028", "", false));
    assertThat(made().nothing()).isEmpty();
    assertThat(model.plan().orElseThrow().lines().flatMap(line -> line.work().pages().stream()))
        .extracting(Page::id)
        .contains("replace-gasket");
    assertThat(model.lines()).isNotEmpty();
    assertThat(model.lines().get(0).part()).matches("(Sat|Sun)\\w+, .*");
    String sheet = new PlainText().render(made().screen(), 200);
    assertThat(sheet).contains("Replace the locker gasket").contains("No choice takes more");
    assertThat(new PlainText().render(made().paper().get(), 100)).contains("Replace the locker");
    assertThat(made().csv().get()).contains("replace-gasket");
    assertThat(made().name()).isEqualTo("plan-knot-2028-04-30");
  }

  @Test
  void plansOnTheDaysThatAreNamed() {
    model.ask(new PlanModel.Ask("", "30 April 2028", "8.4.2028=2; 31.4.2028=5", false));
    assertThat(made().nothing()).isEmpty();
    assertThat(model.lines().get(0).part()).contains("8\u00a0Apr\u00a02028");
    assertThat(new PlainText().render(made().screen(), 200)).contains("April 2028 has no day 31");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | 30 April 2028 | '' | Hours are a number greater than 0",
        "-3 | 30 April 2028 | '' | Hours are a number greater than 0",
        "four | 30 April 2028 | '' | Hours are a number greater than 0",
        "4 | 31 April 2028 | '' | April 2028 has no day 31",
        "4 | 1 March 2028 | '' | is past",
        "4 | 30 April 2028 | 31.4.2028 | None of the days can be taken"
      })
  void saysWhatIsWrong(String hours, String until, String days, String why) {
    model.ask(new PlanModel.Ask(hours, until, days, false));
    assertThat(made().nothing()).contains(why);
    assertThat(model.lines()).isEmpty();
    model.ask(new PlanModel.Ask("4", "30 April 2028", "", false));
    assertThat(made().nothing()).isEmpty();
  }
}
