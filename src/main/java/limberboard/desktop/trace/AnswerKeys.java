package limberboard.desktop.trace;

import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import limberboard.desktop.parts.FocusedText;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Wrapped;

/**
 * The keys of a check. The question has the focus at first, where Enter does nothing and Space and
 * Page Down move the card; arrows and numbers go to an answer, and Enter answers only there.
 */
final class AnswerKeys {
  private static final int NUMBERS = 9;
  private final JComponent sheet;
  private Optional<Wrapped> question = Optional.empty();
  private List<AbstractButton> answers = List.of();

  /**
   * Keys without a check.
   *
   * @param card within which numbers work
   * @param sheet what is moved
   */
  AnswerKeys(JComponent card, JComponent sheet) {
    this.sheet = sheet;
    for (int number = 1; number <= NUMBERS; number++) {
      int index = number - 1;
      Keys.within(card, String.valueOf(number), () -> go(index));
      Keys.within(card, "NUMPAD" + number, () -> go(index));
    }
  }

  /** The question, which takes the focus. */
  Optional<Wrapped> question() {
    return question;
  }

  /** From now on the keys are those of this check. */
  void of(Wrapped asked, List<? extends AbstractButton> buttons) {
    question = Optional.of(asked);
    answers = List.copyOf(buttons);
    new FocusedText(asked, sheet).named("question");
    Keys.focused(asked, "DOWN", () -> go(0));
    Keys.focused(asked, "RIGHT", () -> go(0));
    IntStream.range(0, answers.size()).forEach(this::bindAnswer);
  }

  private void bindAnswer(int index) {
    AbstractButton button = answers.get(index);
    Keys.focused(button, "RIGHT", () -> go(index + 1));
    Keys.focused(button, "DOWN", () -> go(index + 1));
    Keys.focused(button, "LEFT", () -> go(index - 1));
    Keys.focused(button, "UP", () -> go(index - 1));
  }

  private void go(int index) {
    if (index < 0) {
      question.ifPresent(JComponent::requestFocusInWindow);
    } else if (index < answers.size()) {
      AbstractButton button = answers.get(index);
      button.requestFocusInWindow();
      button.scrollRectToVisible(new Rectangle(0, 0, button.getWidth(), button.getHeight()));
    }
  }
}
