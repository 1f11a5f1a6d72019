package limberboard.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.LongStream;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillStep.Ask;
import limberboard.effort.AnswerModel;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import org.junit.jupiter.api.Test;

class DrillRunTest {
  private static final Fault OIL = DrillDemo.fault("oil-in-keel-compartment", "whimbrel");
  private static final int MANY = 20_000;

  private static DrillRun run(long seed, String... steps) {
    return DrillRun.of(
        DrillDemo.drill(OIL, seed, 1), List.of(steps).stream().map(StepReader::read).toList());
  }

  @Test
  void theSameOrderMakesTheSameDrill() {
    Drill one = DrillDemo.drill(OIL, 7, 0);
    Drill other = DrillDemo.drill(DrillDemo.fault("oil-in-keel-compartment", "whimbrel"), 7, 0);
    assertThat(other.letter()).isEqualTo(one.letter()).hasSize(3);
    assertThat(other.hiddenCause().id()).isEqualTo(one.hiddenCause().id());
    assertThat(other.stamp()).isEqualTo(one.stamp()).hasSize(12);
    for (FaultCheck check : OIL.checks()) {
      assertThat(other.answer(check)).isEqualTo(one.answer(check));
    }
  }

  @Test
  void causesAreDrawnByTheirChances() {
    AnswerModel model = OIL.model().answers();
    int[] drawn = new int[model.causes()];
    LongStream.range(0, MANY).forEach(seed -> drawn[HiddenFault.cause(OIL, seed)]++);
    for (int cause = 0; cause < drawn.length; cause++) {
      double share = model.prior(cause);
      double spread = Math.sqrt(share * (1 - share) / MANY);
      assertThat((double) drawn[cause] / MANY).isCloseTo(share, within(4 * spread));
    }
  }

  @Test
  void answersAreDrawnByTheirLikelihoods() {
    int check = OIL.checkNumber("work-the-keel");
    int union = OIL.causeNumber("union");
    int answers = OIL.model().answers().answers(check);
    double told = 1 - OIL.model().checks().get(check).cantTell();
    int[] drawn = new int[answers];
    for (long seed = 0; seed < MANY; seed++) {
      int answer = HiddenFault.draw(OIL, seed, union).answers().get(check);
      if (answer >= 0) {
        drawn[answer]++;
      }
    }
    for (int answer = 0; answer < answers; answer++) {
      double share = told * OIL.model().answers().likelihood(check, answer, union);
      double spread = Math.sqrt(share * (1 - share) / MANY);
      assertThat((double) drawn[answer] / MANY).isCloseTo(share, within(4 * spread));
    }
  }

  @Test
  void whatTheOwnerTellsUnaskedGivesNothingAwayBeyondItsAnswer() {
    double[] told = new double[OIL.causes().size()];
    int[] drawn = new int[OIL.causes().size()];
    for (long seed = 0; seed < MANY; seed++) {
      HiddenFault hidden = HiddenFault.draw(OIL, seed, HiddenFault.cause(OIL, seed));
      drawn[hidden.cause()]++;
      told[hidden.cause()] += hidden.told().isPresent() ? 1 : 0;
    }
    double share = Arrays.stream(told).sum() / MANY;
    assertThat(share).isBetween(0.1, 0.9);
    for (int cause = 0; cause < told.length; cause++) {
      double spread = Math.sqrt(share * (1 - share) / drawn[cause]);
      assertThat(told[cause] / drawn[cause]).isCloseTo(share, within(4 * spread));
    }
  }

  @Test
  void whoAsksAgainGetsTheSameAnswerAndPaysAgain() {
    DrillRun once = run(3, "check hose-look");
    DrillRun twice = once.take(new Ask("hose-look"));
    assertThat(twice.done().get(1).reply()).isEqualTo(once.done().get(0).reply());
    assertThat(once.minutes()).isEqualTo(19); // 8, and 11 to open
    assertThat(twice.minutes()).isEqualTo(27);
    assertThat(twice.now().chances()).containsExactly(once.now().chances(), within(1e-12));
  }

  @Test
  void whatIsOpenedIsPaidOnce() {
    DrillRun run = run(3, "open sole-boards-lifted", "check hose-look", "open sole-boards-lifted");
    assertThat(run.minutes()).isEqualTo(3 + 8 + 8);
    assertThat(run.open()).hasSize(2);
  }

  @Test
  void whatCanBeOpenedIsNumberedAsTheModelCountsIt() {
    List<String> ids = OIL.access().stream().map(access -> access.id()).toList();
    assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    for (int check = 0; check < OIL.checks().size(); check++) {
      BitSet numbers = new BitSet();
      OIL.checks().get(check).access().forEach(access -> numbers.set(ids.indexOf(access.id())));
      assertThat(OIL.model().checks().get(check).access()).isEqualTo(numbers);
    }
    for (int cause = 0; cause < OIL.causes().size(); cause++) {
      BitSet numbers = new BitSet();
      OIL.causes().get(cause).mendAccess().forEach(each -> numbers.set(ids.indexOf(each.id())));
      assertThat(OIL.model().mends().get(cause).access()).isEqualTo(numbers);
    }
  }

  @Test
  void theMendOfTheHiddenCauseCuresAndEndsIt() {
    long seed = Drill.seedFor(OIL, "union", 0).orElseThrow();
    DrillRun run = run(seed, "mend union 90");
    assertThat(run.drill().hiddenCause().id()).isEqualTo("union");
    assertThat(run.ended()).isEqualTo(run.drill().isCuredBy(run.drill().hiddenCause()));
    assertThat(run.last().orElseThrow().unheeded()).isNotEmpty();
    long others = Drill.seedFor(OIL, "overfilled", 0).orElseThrow();
    assertThat(run(others, "mend union 90").last().orElseThrow().reply().kind())
        .isEqualTo(Kind.NOT_CURED);
  }

  @Test
  void workThatIsNotOnesOwnIsRefused() {
    DrillRun run = run(3, "mend ram-seals 90");
    assertThat(run.last().orElseThrow().reply().kind()).isEqualTo(Kind.NOT_YOURS);
    assertThat(run.minutes()).isZero();
    assertThat(run.ended()).isFalse();
  }

  @Test
  void theYardCostsMoreWhenItIsToldAWrongCause() {
    long seed = Drill.seedFor(OIL, "hose", 0).orElseThrow();
    double right = run(seed, "yard hose 60").minutes();
    assertThat(right).isEqualTo(OIL.yardMinutes());
    assertThat(run(seed, "yard union 60").minutes()).isEqualTo(right + OIL.model().searchMinutes());
    assertThat(run(seed, "yard").minutes()).isEqualTo(right + OIL.model().searchMinutes());
    assertThat(run(seed, "give-up").last().orElseThrow().reply().kind()).isEqualTo(Kind.GAVE_UP);
  }

  @Test
  void aCautionWhoseStepWasTakenIsNotLeftOut() {
    DrillRun careless = run(3, "check hose-look", "check hose-look");
    DrillRun careful =
        run(
            3,
            "caution hydraulic-pressure",
            "caution under-raised-keel",
            "caution petrol-vapour",
            "check hose-look");
    assertThat(careless.done().get(0).unheeded()).hasSize(3);
    assertThat(careless.done().get(1).unheeded()).as("each once").isEmpty();
    assertThat(careful.done().get(3).unheeded()).isEmpty();
  }

  @Test
  void whatDoesNotExistIsRefusedAndSaysWhatDoes() {
    DrillRun run = DrillRun.begin(DrillDemo.drill(OIL, 3, 0));
    assertRefused(run, "check nix", "there are: sight-glass");
    assertRefused(run, "open nix", "sole-boards-lifted");
    assertRefused(run, "mend nix 50", "there are: union");
    assertRefused(run, "mend something-else 50", "no mend");
    assertRefused(run, "caution nix", "hydraulic-pressure");
    assertRefused(run, "safe sight-glass", "comes first for safety");
    assertRefused(run, "hint", "no hints are allowed");
    assertThatThrownBy(() -> StepReader.read("mend union")).hasMessageContaining("how sure");
    assertThatThrownBy(() -> StepReader.read("mend union 101")).hasMessageContaining("0 to 100");
    assertThatThrownBy(() -> StepReader.read("ask union")).hasMessageContaining("check CHECK");
    DrillRun over = run(3, "yard");
    assertThatThrownBy(() -> over.take(new Ask("hose-look"))).hasMessageContaining("over");
    assertThatThrownBy(() -> run(3, "hint", "hint")).hasMessageContaining("step 2: all hints");
  }

  private static void assertRefused(DrillRun run, String step, String says) {
    assertThatThrownBy(() -> run.take(StepReader.read(step)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(says);
  }

  @Test
  void stepsAreReadAsTheyAreWritten() {
    for (String step :
        List.of(
            "check a", "open b", "caution c", "safe d", "mend e 70", "yard f 0", "yard", "hint")) {
      assertThat(StepReader.read(step).text()).isEqualTo(step);
    }
    assertThat(StepReader.read("  mend   e 70 % ").text()).isEqualTo("mend e 70");
  }

  @Test
  void aBoatIsMadeUpOfWhatHerModelHas() {
    for (Page<Model> model : DrillDemo.workspace().library().all(Model.class)) {
      for (long seed = 0; seed < 20; seed++) {
        var boat = new MadeUpBoat(model, seed, 2026).boat();
        var again = DrillDemo.workspace().boat(boat.id());
        assertThat(again).as(boat.id()).isPresent();
        assertThat(again.get().equipment()).isEqualTo(boat.equipment());
        assertThat(boat.built()).isLessThanOrEqualTo(2026);
      }
    }
  }

  @Test
  void aCauseThatAnotherBoatHasCannotBeHidden() {
    assertThatThrownBy(() -> Drill.seedFor(OIL, "nix", 0))
        .hasMessageContaining("no cause of \"Oil in the keel compartment\" on this boat");
    for (FaultCause cause : OIL.causes()) {
      long seed = Drill.seedFor(OIL, cause.id(), 100).orElseThrow();
      assertThat(DrillDemo.drill(OIL, seed, 0).hiddenCause().id()).isEqualTo(cause.id());
    }
  }
}
