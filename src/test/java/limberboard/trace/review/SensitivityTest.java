package limberboard.trace.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import limberboard.trace.Fault;
import limberboard.trace.RandomFaults;
import limberboard.trace.Trace;
import limberboard.trace.Yard;
import limberboard.trace.review.DecisiveEstimate.Wrong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The figures are worked out by hand; something else is made too rare to count. */
class SensitivityTest {
  @TempDir Path folder;
  private Yard yard;

  @BeforeEach
  void makeYard() {
    yard = new Yard(folder).withBoats();
  }

  private List<DecisiveEstimate> estimates(String page) {
    return Sensitivity.of(yard.symptom(page).onKnot()).estimates();
  }

  /** Two causes, a and b, whose mends always cure, and no check. */
  private String twoMends(double weightOfA) {
    yard.mend("mend-a", "owner", 50, "").mend("mend-b", "owner", 40, "");
    return """
    something-else: 0.000000001
    causes:
      - {id: a, title: A, weight: %s, mend: mend-a, cures: 1}
      - {id: b, title: B, weight: 1, mend: mend-b, cures: 1}
    checks: []
    """
        .formatted(weightOfA);
  }

  /**
   * a takes 50 minutes and b 40, so a comes first while it is more than 50 ÷ 40 = 1.25 times as
   * likely. At 1.5 times it does. Were a half as likely or b twice, it would be 0.75 times as
   * likely: a has 3/7 and b 4/7. First a then costs 50 + 4/7 × 40, first b 40 + 3/7 × 50, which is
   * 80/7 less.
   */
  @Test
  void aWeightThatDecidesTheOrderOfMendsIsNamedWithWhatIsLost() {
    List<DecisiveEstimate> found = estimates(twoMends(1.5));
    assertThat(found).hasSize(2);
    assertThat(found).allMatch(estimate -> estimate.kind().equals("weight"));
    assertThat(found).allMatch(estimate -> estimate.then().id().equals("mend-b"));
    assertThat(found)
        .allSatisfy(e -> assertThat(e.minutesLost()).isCloseTo(80.0 / 7, within(1e-5)));
    assertThat(found)
        .anySatisfy(
            estimate -> {
              assertThat(estimate.cause().id()).isEqualTo("a");
              assertThat(estimate.wrong()).isEqualTo(Wrong.HALF);
              assertThat(estimate.value()).isCloseTo(0.6, within(1e-8));
              assertThat(estimate.instead()).isCloseTo(3.0 / 7, within(1e-8));
            })
        .anySatisfy(
            estimate -> {
              assertThat(estimate.cause().id()).isEqualTo("b");
              assertThat(estimate.wrong()).isEqualTo(Wrong.TWICE);
              assertThat(estimate.value()).isCloseTo(0.4, within(1e-8));
              assertThat(estimate.instead()).isCloseTo(4.0 / 7, within(1e-8));
            });
  }

  /**
   * With r the odds of a against b, first a costs 10 + (40 − 50 r) ÷ (1 + r) minutes more than
   * first b. At 2.6 half is 1.3: still above 1.25. At 2.48 it is 1.24, and 0.18 minutes are lost,
   * too few to be said. At 2.4 it is 1.2, and 0.91 minutes are lost.
   */
  @ParameterizedTest
  @CsvSource({"2.6, 0", "2.48, 0", "2.4, 2"})
  void aWeightIsNamedFromTheThresholdOn(double weightOfA, int found) {
    assertThat(estimates(twoMends(weightOfA))).hasSize(found);
  }

  /** Two causes equally likely, 60 minutes each, and a check that is right nine times in ten. */
  private String oneCheck(double minutes, String more) {
    yard.mend("mend-a", "owner", 60, "").mend("mend-b", "owner", 60, "");
    return """
    something-else: 0.000000001
    causes:
      - {id: a, title: A, weight: 1, mend: mend-a, cures: 1}
      - {id: b, title: B, weight: 1, mend: mend-b, cures: 1}
    checks:
      - {id: look, ask: Look, how: Look., minutes: %s, answers: [like-a, like-b], cant-tell: 0, %s
         finds: {like-a: {a: 0.9}, like-b: {b: 0.9}}}
    """
        .formatted(minutes, more);
  }

  /**
   * Without the check: 60 + ½ × 60 = 90 minutes. With it, wrong once in ten: c + 60 + 0.1 × 60 = c
   * + 66. Were the right answer for one cause only half as sure, 0.45, it would be wrong in ½ ×
   * 0.55 + ½ × 0.1 = 0.325 of all cases: c + 79.5, dearer than 90 when c is more than 10.5, by c −
   * 10.5.
   */
  @Test
  void aLikelihoodThatDecidesWhetherACheckPaysIsNamed() {
    List<DecisiveEstimate> found = estimates(oneCheck(12, ""));
    assertThat(found).hasSize(2);
    assertThat(found).allMatch(estimate -> estimate.kind().equals("likelihood"));
    assertThat(found).allMatch(estimate -> estimate.wrong() == Wrong.HALF);
    assertThat(found).allSatisfy(e -> assertThat(e.instead()).isCloseTo(0.45, within(1e-9)));
    assertThat(found).allMatch(estimate -> estimate.then().kind().equals("mend"));
    assertThat(found).allSatisfy(e -> assertThat(e.minutesLost()).isCloseTo(1.5, within(1e-5)));
    assertThat(found)
        .extracting(e -> e.cause().id() + " " + e.found().orElseThrow().answer())
        .containsExactlyInAnyOrder("a like-a", "b like-b");
  }

  /** c is 10: half a minute is lost by no wrong estimate. */
  @Test
  void aCheckThatPaysAllTheSameIsNotNamed() {
    assertThat(estimates(oneCheck(10, ""))).isEmpty();
  }

  @Test
  void whatSafetyAsksForNoEstimateDecides() {
    Sensitivity found =
        Sensitivity.of(
            yard.symptom(
                    oneCheck(
                        12, "comes-first: true, make-safe: Stand clear., safe-when: [like-a],"))
                .onKnot());
    assertThat(found.changes()).isZero();
    assertThat(found.estimates()).isEmpty();
    Trace after = found.at().answer("look", "like-a");
    assertThat(Sensitivity.of(after).changes()).isPositive();
  }

  /** Three weights and four likelihoods, each twice and half. */
  @Test
  void everyEstimateIsTriedTwiceAndHalf() {
    assertThat(Sensitivity.of(yard.symptom(oneCheck(12, "")).onKnot()).changes()).isEqualTo(14);
  }

  /** A likelihood of 0 stays, and one of 0.99 or more is not raised. */
  @Test
  void whatIsRuledOutIsNotTried() {
    String page = oneCheck(12, "").replace("{a: 0.9}", "{a: 1}");
    assertThat(Sensitivity.of(yard.symptom(page).onKnot()).changes()).isEqualTo(6 + 1 + 4);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void standsAnyPage(long seed) {
    Sensitivity found = Sensitivity.of(new RandomFaults(seed).fault(5, 4));
    assertThat(found.estimates())
        .allMatch(e -> e.minutesLost() >= Sensitivity.WORTH_SAYING)
        .isSortedAccordingTo(Comparator.comparingDouble(DecisiveEstimate::minutesLost).reversed());
  }

  /** The work is shared out between processors, which must not show. */
  @Test
  void comesToTheSameEachTime() {
    Fault fault = new RandomFaults(7).fault(6, 5);
    Sensitivity first = Sensitivity.of(fault);
    assertThat(first.estimates()).isNotEmpty();
    assertThat(Sensitivity.of(fault)).isEqualTo(first);
  }

  @Test
  void standsAPageWithoutCausesOrChecks() {
    assertThat(Sensitivity.of(new RandomFaults(1).fault(0, 0)).estimates()).isEmpty();
    assertThat(Sensitivity.of(new RandomFaults(1).fault(0, 3)).estimates()).isEmpty();
  }
}
