package limberboard.desktop.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.file.WorkspaceDrills;
import org.junit.jupiter.api.Test;

/** A drill is made, played and marked in the background. */
class DrillModelTest {
  private static final Workspace WORKSPACE = SmallWorkspace.read();
  private static final WorkspaceDrills DRILLS =
      new WorkspaceDrills(WORKSPACE, SmallWorkspace.TODAY);

  private final Steps work = new Steps();
  private final Notices notices = new Notices();
  private final DrillModel model =
      new DrillModel(
          new Background(work, Runnable::run, new Activity(), notices), notices, Guard.NONE);

  private void begin(String symptom) {
    model.begin(
        Optional.of("Ada"),
        () -> DRILLS.drill(new DrillOrder(symptom, "knot", SmallWorkspace.TODAY, 7, 1)));
  }

  private void untilOver() {
    begin("wet-locker");
    work.all();
    model.letterRead();
    model.take(new DrillStep.Ask("when"));
    work.all();
    model.take(new DrillStep.GiveUp());
    work.next();
  }

  @Test
  void nothingIsDoneBeforeTheBackgroundHasDoneIt() {
    begin("wet-locker");
    assertThat(model.stage()).isEqualTo(DrillStage.NONE);
    work.all();
    assertThat(model.stage()).isEqualTo(DrillStage.LETTER);
    model.letterRead();
    model.take(new DrillStep.Ask("when"));
    assertThat(model.run().orElseThrow().done()).isEmpty();
    work.all();
    assertThat(model.run().orElseThrow().done()).hasSize(1);
    assertThat(model.stage()).isEqualTo(DrillStage.WORKING);
  }

  @Test
  void markingCanBeStoppedAndBegunAgain() {
    untilOver();
    assertThat(model.stage()).isEqualTo(DrillStage.OVER);
    assertThat(model.isMarking()).isTrue();
    model.stop();
    work.all();
    assertThat(model.marks()).isEmpty();
    assertThat(model.isMarking()).isFalse();
    model.mark();
    work.all();
    assertThat(model.stage()).isEqualTo(DrillStage.MARKED);
    assertThat(model.marks().orElseThrow().steps()).hasSize(2);
  }

  @Test
  void aDrillThatCannotBeMadeSaysWhyAndLeavesTheOneBefore() {
    begin("wet-locker");
    work.all();
    begin("no-such");
    work.all();
    assertThat(model.run().map(run -> run.drill().order().symptom())).contains("wet-locker");
    assertThat(notices.current().orElseThrow().text())
        .isEqualTo("No drill was begun: there is no symptom \"no-such\" any more.");
  }

  @Test
  void takingACautionsStepFoldsItAndLeavesNothingOut() {
    begin("wet-locker");
    work.all();
    model.letterRead();
    assertThat(model.cautions()).isNotEmpty();
    assertThat(model.read().isRead(model.cautions().get(0))).isFalse();
    model.read(model.cautions());
    work.all();
    assertThat(model.cautions()).allMatch(caution -> model.read().isRead(caution));
    model.take(new DrillStep.Ask("when"));
    work.all();
    assertThat(model.run().orElseThrow().last().orElseThrow().unheeded()).isEmpty();
  }

  @Test
  void whatIsOfferedSaysNothingOfChances() {
    begin("wet-locker");
    work.all();
    DrillRun run = model.run().orElseThrow();
    List<StepOffer> all = new StepOffers(run).all();
    assertThat(all).extracting(StepOffer::key).doesNotHaveDuplicates();
    assertThat(all).extracting(StepOffer::kind).contains(StepOffer.Kind.values()[0]);
    assertThat(all)
        .allSatisfy(
            offer ->
                assertThat(offer.title() + offer.facts() + offer.found())
                    .doesNotContain("%")
                    .doesNotContain("likel"));
    List<String> causes =
        all.stream()
            .filter(offer -> offer.kind() == StepOffer.Kind.MEND)
            .map(StepOffer::id)
            .toList();
    List<String> inOrder =
        run.drill().fault().causes().stream()
            .filter(cause -> !cause.isSomethingElse())
            .map(cause -> cause.id())
            .toList();
    assertThat(causes).isEqualTo(inOrder);
  }
}
