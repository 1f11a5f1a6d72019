package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Cautions of a trace at the terminal: the question, the short form, the whole text once. */
class CautionsTextTest {
  private static final String ASKED = "Is the water rising?";
  private static final String DANGER = "A 25 mm hole half a metre under water";
  private static final String ACT = "Put on life jackets, everybody, now.";

  private static String typed(String typed, String symptom, String boat) {
    return TerminalRun.ofDemo(LocalDate.of(2026, 6, 1))
        .typing(typed, "trace", symptom, "--boat", boat)
        .ended(ExitCode.OK)
        .all();
  }

  private static String state(String symptom, String boat, String... answers) {
    String[] words = new String[4 + answers.length];
    System.arraycopy(new String[] {"trace", symptom, "--boat", boat}, 0, words, 0, 4);
    System.arraycopy(answers, 0, words, 4, answers.length);
    return TerminalRun.ofDemo(LocalDate.of(2026, 6, 1)).typing("", words).ended(ExitCode.OK).all();
  }

  @Test
  void whetherThereIsAnEmergencyIsAskedBeforeAnythingElse() {
    String yes = typed("maybe\nyes\nstop\n", "water-in-forward-cabin", "dunlin");
    assertThat(yes.indexOf(ASKED)).isBetween(0, yes.indexOf("Type yes, no or stop."));
    assertThat(yes.indexOf(ACT)).isBetween(yes.indexOf(DANGER), yes.indexOf("Check: "));
    assertThat(yes).containsOnlyOnce(ACT);
  }

  @Test
  void withoutOneItFoldsToALineAndItsWholeTextIsAWordAway() {
    String no = typed("no\nstop\n", "water-in-forward-cabin", "dunlin");
    assertThat(no).contains("CAUTION: Flooding (" + ASKED + " No)").doesNotContain(DANGER);
    String whole = typed("no\ncautions\nstop\n", "water-in-forward-cabin", "dunlin");
    assertThat(whole.indexOf(ACT)).isGreaterThan(whole.indexOf("Check: "));
  }

  @Test
  void whoStopsOrSaysNothingAtTheQuestionIsToldWhatToDo() {
    assertThat(typed("stop\n", "water-in-forward-cabin", "dunlin")).contains(ACT);
    assertThat(typed("", "water-in-forward-cabin", "dunlin")).contains(ACT);
  }

  @Test
  void aCautionIsShortUntilItIsReadAndThenItsName() {
    String rule = "Keel on solid blocks or pinned before anyone reaches under it.";
    String before = typed("stop\n", "keel-will-not-stay-up", "whimbrel");
    assertThat(before).contains("CAUTION: Under a raised keel", rule).doesNotContain("  - ");
    String after = typed("cautions\n1\nstop\n", "keel-will-not-stay-up", "whimbrel");
    assertThat(after.substring(after.lastIndexOf("Chances before any answer")))
        .doesNotContain("comes down without warning");
  }

  @Test
  void whereItStandsHasThemShortBeforeTheStepAndWholeAtTheEnd() {
    String state = state("keel-will-not-stay-up", "whimbrel", "--answer", "pin=neither");
    int step = state.indexOf("Make it safe");
    int full = state.indexOf("The cautions in full");
    assertThat(state.indexOf("CAUTION: Under a raised keel")).isBetween(0, step);
    assertThat(full).isGreaterThan(step);
    assertThat(state.indexOf("  - ")).isGreaterThan(full);
  }

  @Test
  void aNamedEmergencyStandsInFullBehindItsQuestion() {
    String state = state("water-in-forward-cabin", "dunlin", "--answer", "taste=salt");
    assertThat(state.indexOf(ASKED + " If so, or if you cannot tell:"))
        .isBetween(0, state.indexOf(ACT));
    assertThat(state.indexOf(ACT)).isLessThan(state.indexOf("Check: "));
  }
}
