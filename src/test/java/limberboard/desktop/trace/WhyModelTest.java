package limberboard.desktop.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.trace.Alternative;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;
import limberboard.trace.StepOutcome;
import limberboard.trace.Trace;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class WhyModelTest {
  private final Steps steps = new Steps();
  private final WhyModel model = new WhyModel(steps.background());
  private final Trace trace = begin();

  private static Trace begin() {
    Workspace workspace = SmallWorkspace.read();
    return Trace.begin(
        Fault.of(
            workspace.library().symptom("wet-locker").orElseThrow(),
            new Fitting(workspace.boat("knot").orElseThrow(), SmallWorkspace.TODAY),
            workspace.library(),
            List.of()));
  }

  private void open() {
    model.open(trace, trace.next());
  }

  @Test
  void nothingIsWorkedOutUntilItIsOpened() {
    assertThat(steps.waiting()).isZero();
    open();
    assertThat(model.isWorking()).isTrue();
    assertThat(model.options()).isEmpty();
    steps.all();
    assertThat(model.isWorking()).isFalse();
    assertThat(model.options()).isEqualTo(trace.alternatives());
  }

  @Test
  void thereIsOneEffectForEachAnswerAndItIsWhatTheTraceSaysThere() {
    open();
    steps.all();
    List<StepOutcome> outcomes = trace.outcomes(trace.next());
    assertThat(model.effects()).hasSameSizeAs(outcomes);
    for (int i = 0; i < outcomes.size(); i++) {
      Trace then = outcomes.get(i).then().orElseThrow();
      Effect effect = model.effects().get(i);
      assertThat(effect.chance()).isEqualTo(outcomes.get(i).chance());
      assertThat(effect.leading()).contains(then.ranking().get(0));
      assertThat(effect.next()).contains(then.next());
      assertThat(effect.minutes()).isEqualTo(then.expectedMinutes());
    }
    double all = model.effects().stream().mapToDouble(Effect::chance).sum();
    assertThat(all).isEqualTo(1, Offset.offset(1e-9));
  }

  /**
   * What a plan costs is its first step and the average of what comes after (Bellman's equation).
   */
  @Test
  void theEffectsAddUpToWhatThePlanCosts() {
    open();
    steps.all();
    double after =
        model.effects().stream().mapToDouble(effect -> effect.chance() * effect.minutes()).sum();
    assertThat(trace.next().minutes() + after)
        .isEqualTo(trace.expectedMinutes(), Offset.offset(0.01));
  }

  @Test
  void anotherStepsAnswersCanBeLookedAtAndLateOutcomesAreDropped() {
    open();
    steps.all();
    NextStep other =
        model.options().stream()
            .map(Alternative::step)
            .filter(step -> step instanceof NextStep.DoMend)
            .findFirst()
            .orElseThrow();
    model.choose(other);
    model.choose(trace.next());
    steps.last();
    steps.all();
    assertThat(model.chosen()).contains(trace.next());
    assertThat(model.effects()).hasSameSizeAs(trace.outcomes(trace.next()));
    model.choose(other);
    steps.all();
    assertThat(model.effects()).extracting(Effect::found).containsExactly("Mended", "Not cured");
    assertThat(model.effects().get(0).leading()).isEmpty();
    assertThat(model.effects().get(0).minutes()).isZero();
  }

  @Test
  void saysWhatIsProven() {
    open();
    assertThat(model.proven()).isEmpty();
    steps.all();
    boolean best = trace.expectedMinutes() - trace.atLeastMinutes() < 0.5;
    assertThat(model.proven().orElseThrow())
        .contains(best ? "proven that none needs less" : "whatever is done: that is proven");
  }

  @Test
  void handingItToTheYardHasNothingToWaitFor() {
    NextStep yard =
        trace.alternatives().stream()
            .map(Alternative::step)
            .filter(step -> step instanceof NextStep.CallYard)
            .findFirst()
            .orElseThrow();
    open();
    model.choose(yard);
    steps.all();
    assertThat(model.isWorking()).isFalse();
    assertThat(model.effects()).isEmpty();
  }

  @Test
  void whatIsClosedForgetsEverything() {
    open();
    model.close();
    steps.all();
    assertThat(model.options()).isEmpty();
    assertThat(model.proposed()).isEqualTo(Optional.empty());
  }
}
