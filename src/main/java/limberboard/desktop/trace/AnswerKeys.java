package limberboard.desktop.trace;

import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.border.Border;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Wrapped;

/**
 * The keys of a check. The question has the focus at first, where Enter does nothing and Space and
 * Page Down move the card; arrows and numbers go to an answer, and Enter answers only there.
 */
final class AnswerKeys {
  private static final int NUMBERS = 9;
  private static final int MARK = 3;
  private static final Border UNMARKED = BorderFactory.createEmptyBorder(0, MARK + 8, 0, 0);
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
    asked.setName("question");
    asked.setFocusable(true);
    asked.setBorder(UNMARKED);
    asked.addFocusListener(new Mark(asked));
    Keys.focused(asked, "SPACE", () -> move(1));
    Keys.focused(asked, "PAGE_DOWN", () -> move(1));
    Keys.focused(asked, "shift SPACE", () -> move(-1));
    Keys.focused(asked, "PAGE_UP", () -> move(-1));
    Keys.focused(asked, "DOWN", () -> go(0));
    Keys.focused(asked, "RIGHT", () -> go(0));
    Keys.focused(asked, "ENTER", () -> {});
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

  private void move(int by) {
    Container view = SwingUtilities.getAncestorOfClass(JViewport.class, sheet);
    if (view instanceof JViewport port) {
      int height = port.getExtentSize().height;
      JComponent content = (JComponent) port.getView();
      Rectangle seen = port.getViewRect();
      content.scrollRectToVisible(
          new Rectangle(0, Math.max(0, seen.y + by * (height - 24)), 1, height));
    }
  }

  /** Shows by a line at its left that the question has the focus. */
  private record Mark(JComponent question) implements FocusListener {
    @Override
    public void focusGained(FocusEvent e) {
      question.setBorder(
          BorderFactory.createCompoundBorder(
              BorderFactory.createMatteBorder(0, MARK, 0, 0, Palette.ACCENT.color()),
              BorderFactory.createEmptyBorder(0, 8, 0, 0)));
    }

    @Override
    public void focusLost(FocusEvent e) {
      question.setBorder(UNMARKED);
    }
  }
}
