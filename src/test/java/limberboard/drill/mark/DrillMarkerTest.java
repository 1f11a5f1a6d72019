package limberboard.drill.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import limberboard.boat.Fitting;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillDemo;
import limberboard.drill.DrillRun;
import limberboard.drill.StepReader;
import limberboard.drill.mark.DrillDanger.Kind;
import limberboard.effort.Bounds;
import limberboard.effort.Following;
import limberboard.effort.Planner;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import org.junit.jupiter.api.Test;

class DrillMarkerTest {
  private static final Fault OIL = DrillDemo.fault("oil-in-keel-compartment", "whimbrel");
  private static final DrillMarker MARKER = new DrillMarker(new Counsel(OIL));

  private static DrillMark mark(long seed, String... steps) {
    Drill drill = DrillDemo.drill(OIL, seed, 2);
    return MARKER.mark(DrillRun.of(drill, List.of(steps).stream().map(StepReader::read).toList()));
  }

  @Test
  void theBestPlanIsMarkedWithNothing() {
    Counsel counsel = new Counsel(OIL);
    for (long seed = 0; seed < 10; seed++) {
      DrillMark mark = MARKER.mark(counsel.played(DrillDemo.drill(OIL, seed, 0)));
      assertThat(mark.regret()).isCloseTo(0, within(1e-6));
      assertThat(mark.dangers()).isEmpty();
      assertThat(mark.mistakes()).isEmpty();
      assertThat(mark.plan().minutes()).isEqualTo(mark.run().minutes());
      assertThat(mark.yardAtOnce()).isFalse();
    }
  }

  @Test
  void aCallAtOnceIsMarkedAsSuch() {
    DrillMark mark = mark(7, "yard");
    assertThat(mark.yardAtOnce()).isTrue();
    assertThat(mark.mistakes()).containsOnlyKeys(MistakeKind.YARD_TOO_SOON);
    assertThat(mark.regret()).isGreaterThan(30);
  }

  @Test
  void eachMistakeIsCalledWhatItIs() {
    long hose = Drill.seedFor(OIL, "hose", 0).orElseThrow();
    assertThat(mark(hose, "check hose-look", "check hose-look").mistakes())
        .containsKey(MistakeKind.DONE_AGAIN);
    assertThat(mark(hose, "hint").mistakes()).containsEntry(MistakeKind.HINT, 10.0);
    assertThat(mark(hose, "mend old-spill 10").mistakes()).containsKey(MistakeKind.MENDED_TOO_SOON);
    assertThat(mark(hose, "give-up").mistakes()).containsKey(MistakeKind.GAVE_UP);
    assertThat(mark(hose, "check pump-at-rest").mistakes())
        .containsKey(MistakeKind.OTHER_CHECK_FIRST);
    DrillMark late = mark(hose, "check work-the-keel", "check hose-look", "yard union 5");
    assertThat(late.mistakes()).containsKey(MistakeKind.YARD_TOLD_WRONG);
  }

  @Test
  void dangersAreCountedForThemselves() {
    DrillMark mark = mark(7, "mend ram-seals 50", "check work-the-keel");
    assertThat(mark.dangers())
        .extracting(DrillDanger::kind)
        .containsExactly(
            Kind.NOT_YOURS, Kind.CAUTION_LEFT_OUT, Kind.CAUTION_LEFT_OUT, Kind.CAUTION_LEFT_OUT);
    assertThat(mark.dangers().get(1).said()).isNotBlank();
  }

  @Test
  void aSafetyCheckThatIsPassedOverIsADanger() {
    Fault unsafe = firstDemanding();
    DrillMarker marker = new DrillMarker(new Counsel(unsafe));
    DrillRun begun = DrillRun.begin(DrillDemo.drill(unsafe, 1, 0));
    String demanded = begun.unsafe().orElseThrow().id();
    DrillMark yard = marker.mark(begun.take(StepReader.read("yard")));
    assertThat(yard.dangers())
        .extracting(DrillDanger::kind, DrillDanger::id)
        .containsExactly(tuple(Kind.NOT_SAFE_FIRST, demanded));
    DrillRun safe =
        begun
            .take(StepReader.read("check " + demanded))
            .take(StepReader.read("safe " + demanded))
            .take(StepReader.read("yard"));
    assertThat(marker.mark(safe).dangers())
        .extracting(DrillDanger::kind)
        .doesNotContain(Kind.NOT_SAFE_FIRST);
  }

  private static Fault firstDemanding() {
    return DrillDemo.workspace().library().all(Symptom.class).stream()
        .flatMap(
            page ->
                DrillDemo.workspace().boats().stream()
                    .filter(boat -> new Fitting(boat, DrillDemo.ON).fits(page.head().fits()))
                    .map(boat -> DrillDemo.fault(page.id(), boat.id())))
        .filter(fault -> fault.checks().stream().anyMatch(check -> check.check().comesFirst()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void certaintyIsHeldAgainstWhatItWas() {
    long union = Drill.seedFor(OIL, "union", 0).orElseThrow();
    DrillMark mark = mark(union, "mend overfilled 30", "yard union 60");
    assertThat(mark.certainties()).extracting(Certainty::said).containsExactly(0.3, 0.6);
    assertThat(mark.certainties()).extracting(Certainty::right).containsExactly(false, true);
    assertThat(Certainty.brier(mark.certainties()).getAsDouble())
        .isCloseTo((0.09 + 0.16) / 2, within(1e-12));
  }

  /** What the plan is said to come to lies between what is proven and what following it costs. */
  @Test
  void thePlansMinutesLieWithinThePlannersBounds() {
    DrillMark mark = MARKER.mark(DrillRun.begin(notTold()));
    double followed = new Following(OIL.model(), new Planner()).minutes();
    double proven = Bounds.atLeast(OIL.model(), Double.POSITIVE_INFINITY, 20_000_000);
    assertThat(mark.atLeast()).isLessThanOrEqualTo(proven + 1e-6);
    assertThat(proven).isLessThanOrEqualTo(followed + 1e-6);
    assertThat(mark.expected()).isGreaterThanOrEqualTo(followed - 1e-6);
  }

  private static Drill notTold() {
    long seed = 0;
    while (DrillDemo.drill(OIL, seed, 0).toldUnasked().isPresent()) {
      seed++;
    }
    return DrillDemo.drill(OIL, seed, 0);
  }

  @Test
  void goingThroughItAfterwardsSaysWhatWasKnownAndWhatAnswersMeant() {
    StepMark step = mark(7, "check work-the-keel").steps().get(0);
    assertThat(step.known()).hasSize(3);
    assertThat(step.known().get(0).chance()).isGreaterThanOrEqualTo(step.known().get(1).chance());
    assertThat(step.meaning()).contains("rises from").contains("falls from");
    assertThat(step.best().why()).isNotBlank();
  }
}
