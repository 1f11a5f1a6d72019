package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TypingStepsTest {
  private final TypingSteps steps = new TypingSteps("");

  private void type(String... texts) {
    for (String text : texts) {
      steps.typed(text, false);
    }
  }

  @Test
  void aWordIsOneStepAndSoIsEachSpace() {
    type("w", "we", "wet", "wet ", "wet b", "wet be");
    assertThat(steps.undo()).contains(new TypingSteps.Typed("wet", 3));
    assertThat(steps.undo()).contains(new TypingSteps.Typed("", 0));
    assertThat(steps.undo()).isEmpty();
    assertThat(steps.redo()).map(TypingSteps.Typed::text).contains("wet");
    assertThat(steps.redo()).map(TypingSteps.Typed::text).contains("wet be");
    assertThat(steps.canRedo()).isFalse();
  }

  @Test
  void typingElsewhereBeginsAnotherStep() {
    type("a", "ab", "xab");
    assertThat(steps.undo()).map(TypingSteps.Typed::text).contains("ab");
  }

  @Test
  void deletingIsAStepAndTypingAfterwardsIsAnother() {
    type("wet", "we", "wek");
    assertThat(steps.undo()).map(TypingSteps.Typed::text).contains("we");
    assertThat(steps.undo()).map(TypingSteps.Typed::text).contains("wet");
  }

  @Test
  void bothHalvesOfAReplacementAreOneStep() {
    type("selected");
    steps.typed("", false);
    steps.typed("x", true);
    assertThat(steps.undo()).map(TypingSteps.Typed::text).contains("selected");
  }

  @Test
  void typingAfterUndoingTakesTheRedoAway() {
    type("wet");
    steps.undo();
    type("dry");
    assertThat(steps.canRedo()).isFalse();
    assertThat(steps.undo()).map(TypingSteps.Typed::text).contains("");
  }

  @Test
  void whatTheProgramPutsThereCannotBeUndone() {
    type("wet");
    steps.replaced("another boat");
    assertThat(steps.canUndo()).isFalse();
    assertThat(steps.undo()).isEmpty();
  }

  @Test
  void theLeastChangeIsFound() {
    assertThat(TextChange.between("abcd", "abXcd")).isEqualTo(new TextChange(2, 0, "X"));
    assertThat(TextChange.between("aaa", "aa")).isEqualTo(new TextChange(2, 1, ""));
    assertThat(TextChange.between("abc", "xyz")).isEqualTo(new TextChange(0, 3, "xyz"));
    assertThat(TextChange.between("same", "same")).isEqualTo(new TextChange(4, 0, ""));
  }
}
