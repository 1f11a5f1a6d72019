package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import limberboard.boat.Workspace;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.MakeSafe;
import limberboard.trace.TrailStep.MadeSafe;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** There is no way past a check that safety puts first, except that it is safe. */
class SafetyFirstTest {
  private static final String PAGE =
      """
      causes:
        - {id: one, title: One, weight: 3, mend: short}
        - {id: two, title: Two, weight: 3, mend: other}
      checks:
        - {id: look, ask: Look, how: Look., minutes: 1, answers: [yes, no],
           finds: {yes: {one: always, two: never}}}
        - {id: pin, ask: Is the pin in, how: Look., minutes: 2, answers: [in, out], comes-first: true,
           make-safe: Push it in., safe-when: [in], finds: {out: {one: often, two: seldom}}}
      """;

  @TempDir Path folder;

  private Trace trace;

  @BeforeEach
  void begin() {
    Yard yard = new Yard(folder).withBoats();
    yard.mend("short", "owner", 20, "").mend("other", "owner", 20, "");
    trace = Trace.begin(yard.symptom(PAGE).onKnot());
  }

  private static void isHeldAt(Trace held, Class<? extends NextStep> step) {
    assertThat(held.next()).isInstanceOf(step);
    assertThat(held.next().id()).isEqualTo("pin");
    assertThat(held.isSafe()).isFalse();
    assertThat(held.done()).isFalse();
    assertThat(held.alternatives()).singleElement().extracting("step").isEqualTo(held.next());
    assertThat(held.next().safety()).contains("Push it in.");
  }

  @Test
  void itComesBeforeEverythingAndSaysThatItIsForSafety() {
    isHeldAt(trace, DoCheck.class);
    assertThat(trace.next().why())
        .contains("first for safety", "2 min")
        .doesNotContain("tells", "One", "Two");
  }

  @Test
  void neitherCantTellNorAnAnswerThatIsNotSafeNorAnythingElseGoesPastIt() {
    isHeldAt(trace.cantTell("pin"), MakeSafe.class);
    isHeldAt(trace.answer("pin", "out"), MakeSafe.class);
    isHeldAt(trace.answer("look", "yes"), DoCheck.class);
    isHeldAt(trace.cantTell("look"), DoCheck.class);
    isHeldAt(trace.mendTried("one").mendTried("two"), DoCheck.class);
    isHeldAt(trace.cantTell("pin").answer("look", "no").mendTried("one"), MakeSafe.class);
    assertThat(trace.cantTell("pin").next().why()).contains("first for safety");
  }

  @Test
  void aSafeAnswerGoesOnAndChangingItComesBack() {
    Trace safe = trace.answer("pin", "in");
    assertThat(safe.isSafe()).isTrue();
    assertThat(safe.next().id()).isEqualTo("look");
    isHeldAt(safe.answer("pin", "out"), MakeSafe.class);
    isHeldAt(safe.takeBack("pin"), DoCheck.class);
    isHeldAt(safe.cantTell("pin"), MakeSafe.class);
  }

  @Test
  void whatIsMadeSafeGoesOnAndTheAnswerStillCounts() {
    Trace safe = trace.answer("pin", "out").madeSafe("pin");
    assertThat(safe.next().id()).isEqualTo("look");
    assertThat(safe.answers()).containsEntry("pin", "out");
    assertThat(safe.ranking().get(0).cause().id()).isEqualTo("one");
    assertThat(safe.ranking().get(0).chance())
        .isEqualTo(trace.answer("pin", "out").ranking().get(0).chance());
    assertThat(safe.trail()).extracting(TrailEntry::answer).containsExactly("out", "made safe");
    assertThat(safe.explain()).contains("It changes no chance.");
    assertThat(safe.expectedMinutes()).isEqualTo(trace.answer("pin", "out").expectedMinutes());
  }

  @Test
  void takingBackTheAnswerTakesBackThatItIsSafe() {
    Trace safe = trace.cantTell("pin").madeSafe("pin");
    assertThat(safe.isSafe()).isTrue();
    isHeldAt(safe.takeBackSafe("pin"), MakeSafe.class);
    isHeldAt(safe.takeBack("pin"), DoCheck.class);
    assertThat(safe.takeBack("pin").trail()).isEmpty();
  }

  @Test
  void madeSafeWithoutAnAnswerCountsAsOneThatCouldNotBeTold() {
    Trace safe = trace.madeSafe("pin");
    assertThat(safe).isEqualTo(trace.cantTell("pin").madeSafe("pin"));
    assertThat(safe.trail()).extracting(TrailEntry::step).contains(new MadeSafe("pin"));
    assertThat(safe.next().id()).isEqualTo("look");
    assertThatThrownBy(() -> trace.madeSafe("look"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("look");
  }

  @Test
  void onTheTreeNothingLiesBehindItThatIsNotSafe() {
    DiagnosticTree tree = DiagnosticTree.of(trace, 0);
    assertThat(tree.forks()).filteredOn(fork -> fork.step() instanceof MakeSafe).hasSize(2);
    for (Fork fork : tree.forks()) {
      assertThat(fork.at().isSafe()).isEqualTo(!fork.step().id().equals("pin"));
      if (fork.step() instanceof MakeSafe) {
        assertThat(fork.branches())
            .singleElement()
            .satisfies(
                branch -> {
                  assertThat(branch.finding()).isInstanceOf(Finding.MadeSafe.class);
                  assertThat(branch.chance()).isEqualTo(1);
                  assertThat(branch.then().orElseThrow().at().isSafe()).isTrue();
                });
      }
    }
    assertThat(tree.root().expectedMinutes()).isLessThanOrEqualTo(trace.expectedMinutes());
  }

  @Test
  void aPageThatDoesNotSayHowStillHoldsEverybodyBack() {
    Yard yard = new Yard(folder).withBoats();
    Trace silent =
        Trace.begin(
            yard.symptom(PAGE.replace("make-safe: Push it in., safe-when: [in],", "")).onKnot());
    assertThat(silent.answer("pin", "in").next())
        .isInstanceOfSatisfying(
            MakeSafe.class, step -> assertThat(step.how()).contains("Keep everybody clear"));
  }

  /** Random doings on each symptom of the demo that has such a check, on each boat. */
  @Test
  void noWalkThroughTheDemoGoesPastOne() throws IOException {
    Workspace workspace = Articles.workspace();
    Random random = new Random(20261128);
    int held = 0;
    for (Articles.Fitted fitted : Articles.fitted(workspace)) {
      Fault fault = fitted.fault();
      List<String> first =
          fault.checks().stream()
              .filter(check -> check.check().comesFirst())
              .map(FaultCheck::id)
              .toList();
      for (int walk = 0; walk < (first.isEmpty() ? 0 : 40); walk++) {
        Trace at = Trace.begin(fault);
        for (int step = 0; step < 6; step++) {
          at = step(at, random);
          if (!at.isSafe()) {
            held++;
            assertThat(first).contains(at.next().id());
            assertThat(at.next()).isInstanceOfAny(DoCheck.class, MakeSafe.class);
            assertThat(at.alternatives()).hasSize(1);
          }
        }
      }
    }
    assertThat(held).isPositive();
  }

  private static Trace step(Trace at, Random random) {
    Fault fault = at.fault();
    FaultCheck check = fault.checks().get(random.nextInt(fault.checks().size()));
    return switch (random.nextInt(4)) {
      case 0 -> at.cantTell(check.id());
      case 1 -> at.mendTried(fault.causes().get(random.nextInt(fault.causes().size() - 1)).id());
      case 2 -> at.takeBack(check.id());
      default -> at.answer(check.id(), check.answers().get(random.nextInt(check.answers().size())));
    };
  }
}
