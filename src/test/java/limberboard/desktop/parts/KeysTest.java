package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

class KeysTest {
  private final List<Integer> asked = new ArrayList<>();

  private final class Stop extends JPanel {
    private final int number;
    private final boolean owner;

    Stop(int number, boolean owner) {
      this.number = number;
      this.owner = owner;
    }

    @Override
    public boolean isFocusOwner() {
      return owner;
    }

    @Override
    public boolean requestFocusInWindow() {
      return asked.add(number);
    }
  }

  @Test
  void stepsGoRoundAndRoundFromWhereTheFocusIs() {
    JPanel row = new JPanel();
    Keys.step(
        row, "RIGHT", "LEFT", List.of(new Stop(0, true), new Stop(1, false), new Stop(2, false)));
    press(row, "RIGHT");
    press(row, "LEFT");
    assertThat(asked).containsExactly(1, 2);
  }

  @Test
  void withoutTheFocusInThemNothingMoves() {
    JPanel row = new JPanel();
    Keys.step(row, "DOWN", "UP", List.of(new Stop(0, false), new Stop(1, false)));
    press(row, "DOWN");
    assertThat(asked).isEmpty();
  }

  private static void press(JComponent within, String key) {
    Object action =
        within.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(Keys.stroke(key));
    within.getActionMap().get(action).actionPerformed(new ActionEvent(within, 0, key));
  }
}
