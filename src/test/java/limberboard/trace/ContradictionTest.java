package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ContradictionTest {
  private final Trace trace = Trace.begin(Leak.onKnot());

  @Test
  void isSilentWhenTheAnswersGoTogether() {
    Trace agreeing =
        trace.answer("taste", "salt").answer("seal-look", "split").answer("tank-level", "holds");
    assertThat(agreeing.contradiction()).isEmpty();
  }

  @Test
  void isSilentOnOneUnlikelyAnswer() {
    assertThat(trace.answer("tank-level", "loses").contradiction()).isEmpty();
  }

  /** Each of these points to another cause, and denies the rest. */
  @Test
  void saysSoWhenNoCauseExplainsTheAnswers() {
    Contradiction contradiction =
        trace
            .answer("seal-look", "split")
            .answer("hose", "drips-from-bolt")
            .answer("tank-level", "loses")
            .contradiction()
            .orElseThrow();
    assertThat(contradiction.text())
        .startsWith("No cause on the list explains these answers: something else stands at ")
        .endsWith("Check it again.");
    assertThat(contradiction.leading().id()).isEqualTo("bowsprit-seal");
    assertThat(contradiction.against())
        .extracting(against -> against.check().id())
        .containsExactlyInAnyOrder("hose", "tank-level");
    assertThat(contradiction.against())
        .allSatisfy(against -> assertThat(against.without()).isGreaterThan(against.chance()));
    assertThat(contradiction.against())
        .isSortedAccordingTo((a, b) -> Double.compare(b.without(), a.without()));
  }

  @Test
  void goesAwayWhenTheAnswerIsTakenBack() {
    Trace contradicting =
        trace
            .answer("seal-look", "split")
            .answer("hose", "drips-from-bolt")
            .answer("tank-level", "loses");
    assertThat(contradicting.contradiction()).isPresent();
    assertThat(contradicting.takeBack("tank-level").takeBack("hose").contradiction()).isEmpty();
  }

  @Test
  void isNotBlamedOnTheAnswersWhenMendsHaveFailed() {
    Trace tried =
        trace.mendTried("bowsprit-seal").mendTried("stem-fitting").mendTried("condensation");
    assertThat(tried.contradiction()).isEmpty();
  }
}
