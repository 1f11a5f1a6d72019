package limberboard.desktop.upkeep.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.RopedWorkspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.sheets.ShoppingModel.Offer;
import limberboard.desktop.upkeep.sheets.ShoppingModel.RopeOffer;
import limberboard.desktop.upkeep.state.AskedRope;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.text.PlainText;
import limberboard.upkeep.plan.PlanAnswer;
import limberboard.upkeep.plan.PlanOrder;
import limberboard.upkeep.plan.Planning;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShoppingModelTest {
  private static final AskedRope HALYARD = new AskedRope("main-halyard", "Main halyard");
  private static final AskedRope SHEETS = new AskedRope("jib-sheets", "Jib sheets");
  @TempDir private Path folder;
  private WorkspaceFolders folders;
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
  void aPlanIsShoppedForOnItsDaysUntilASeasonIsChosen() {
    upkeep.day(Optional.of(LocalDate.of(2028, 3, 20)));
    steps.all();
    PlanOrder order =
        new PlanOrder(OptionalInt.of(240), LocalDate.of(2028, 4, 30), List.of("8.4.2028"), false);
    PlanAnswer answer = new Planning(upkeep.upkeep().orElseThrow()).answer(order);
    model.choosePlan(((PlanAnswer.Made) answer).plan());
    assertThat(made().name()).isEqualTo("shopping-knot-plan-2028-04-30");
    assertThat(made().screen().title())
        .isEqualTo("Shopping for the plan until 30\u00a0Apr\u00a02028");
    assertThat(new PlainText().render(made().screen(), 200).replace('\u00a0', ' '))
        .contains("on 8 Apr 2028, by the plan of 20 Mar 2028")
        .contains("first needed on 8 Apr 2028");
    assertThat(model.offers())
        .contains(
            new Offer(
                "replace-gasket", "Replace the locker gasket", List.of(LocalDate.of(2028, 4, 8))));
    model.choose("replace-gasket", false);
    assertThat(made().csv().get()).doesNotContain("gasket-strip");
    assertThat(model.plan()).isPresent();
    model.season(2028);
    assertThat(made().name()).isEqualTo("shopping-knot-2028");
    assertThat(model.plan()).isEmpty();
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

  private String text() {
    return new PlainText().render(made().screen(), 200);
  }

  private void ropes() {
    folders = RopedWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    model.season(2028);
    steps.all();
  }

  private void askFor(AskedRope... ropes) {
    model.askForRopes(List.of(ropes));
    steps.all();
  }

  @Test
  void ropesComeToTheWorkWithTheirCuts() {
    ropes();
    model.chooseAll(false);
    askFor(HALYARD, SHEETS);
    assertThat(model.ropes())
        .containsExactly(
            new RopeOffer("main-halyard", "Main halyard", "11 m of 6 mm polyester, braid on braid"),
            new RopeOffer("jib-sheets", "Jib sheets", "2 × 6 m of 6 mm polyester, braid on braid"));
    assertThat(text())
        .contains("What to get for 2 ropes")
        .contains("23 m by the metre")
        .contains("Cut from one length of 23 m: 11 m, 2 × 6 m")
        .contains("Jib sheets: 12 m, 2 pieces of 6 m");
    model.choose("replace-gasket", true);
    assertThat(text()).contains("1 piece of work and 2 ropes").contains("1 × reel of 5 m");
  }

  @Test
  void oneRopeIsTakenOutAndPutBackAndAllOfThemAtOnce() {
    ropes();
    model.chooseAll(false);
    askFor(HALYARD, SHEETS);
    model.chooseRope("jib-sheets", false);
    assertThat(text()).contains("11 m by the metre").doesNotContain("Jib sheets");
    assertThat(model.ropes()).hasSize(2);
    assertThat(model.isRopeChosen("jib-sheets")).isFalse();
    model.chooseRope("jib-sheets", true);
    assertThat(text()).contains("23 m by the metre");
    model.chooseRope("main-halyard", false);
    model.chooseRope("jib-sheets", false);
    assertThat(made().nothing()).startsWith("No work and no rope is chosen");
    model.chooseRope("jib-sheets", true);
    model.chooseAll(true);
    assertThat(text()).contains("1 piece of work and 1 rope").contains("gasket");
    model.chooseAll(false);
    assertThat(text()).contains("What to get for 1 rope");
    model.chooseAll(true);
    askFor();
    assertThat(model.ropes()).isEmpty();
    assertThat(text()).contains("What to get for 1 piece of work, as of");
  }

  @Test
  void otherTickedRopesTakeThePlaceOfThoseBefore() {
    ropes();
    askFor(HALYARD);
    askFor(SHEETS);
    assertThat(model.ropes()).extracting(RopeOffer::id).containsExactly("jib-sheets");
    model.chooseOnly(List.of("replace-gasket"));
    steps.all();
    assertThat(text()).contains("1 piece of work and 1 rope");
  }

  @Test
  void aRopeThatChosenWorkMakesAnewIsBoughtOnceAndSaidSo() {
    ropes();
    model.chooseOnly(List.of("renew-main-halyard"));
    assertThat(text()).contains("11 m by the metre");
    askFor(HALYARD);
    assertThat(text())
        .contains("11 m by the metre")
        .containsAnyOf(
            "counted once with main halyard", "counted once with renew the main halyard");
    model.chooseRope("main-halyard", false);
    assertThat(text()).contains("11 m by the metre").doesNotContain("counted once");
  }

  @Test
  void eachBoatHasItsOwnRopes() {
    ropes();
    askFor(SHEETS);
    session.choose(Optional.of("stint"));
    steps.all();
    assertThat(model.ropes()).isEmpty();
    session.choose(Optional.of("knot"));
    steps.all();
    assertThat(model.ropes()).extracting(RopeOffer::id).containsExactly("jib-sheets");
    model.season(2026);
    steps.all();
    assertThat(made().nothing()).isEmpty();
    assertThat(text()).contains("1 rope");
  }

  @Test
  void aRopeThatIsNotOnTheListAnyMoreIsDroppedAndNamed() {
    ropes();
    model.chooseAll(false);
    askFor(HALYARD, SHEETS);
    assertThat(model.gone()).isEmpty();
    RopedWorkspace.dropJibSheets(folders);
    session.replace(SmallWorkspace.read(folders));
    steps.all();
    assertThat(model.ropes()).extracting(RopeOffer::id).containsExactly("main-halyard");
    assertThat(model.gone()).containsExactly("Jib sheets");
    assertThat(text()).contains("What to get for 1 rope").contains("11 m by the metre");
    askFor();
    assertThat(model.gone()).isEmpty();
    assertThat(made().nothing()).startsWith("No work is chosen");
  }

  @Test
  void aRopeOfUnknownLengthIsListedAsSuch() {
    ropes();
    model.chooseAll(false);
    askFor(new AskedRope("jib-halyard", "Jib halyard"));
    assertThat(model.ropes())
        .singleElement()
        .satisfies(rope -> assertThat(rope.facts()).contains("no I"));
    assertThat(text()).contains("Jib halyard").contains("no I");
  }
}
