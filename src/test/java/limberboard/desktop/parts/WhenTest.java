package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class WhenTest {
  private final List<String> heard = new ArrayList<>();

  @Test
  void eachChangeOfATextIsHeard() {
    JTextField field = new JTextField();
    When.typed(field, () -> heard.add(field.getText()));
    field.setText("a");
    field.setText("");
    assertThat(heard).containsExactly("a", "");
  }

  @Test
  void onlyAnotherWidthIsAChangeOfTheWidth() throws Exception {
    JPanel panel = new JPanel();
    When.resized(panel, () -> heard.add("size"));
    When.widened(panel, () -> heard.add("width"));
    resize(panel, 100, 10);
    assertThat(heard).containsExactlyInAnyOrder("size", "width");
    heard.clear();
    resize(panel, 100, 20);
    assertThat(heard).containsExactly("size");
  }

  private static void resize(JPanel panel, int width, int height) throws Exception {
    EventQueue.invokeAndWait(() -> panel.setSize(width, height));
    EventQueue.invokeAndWait(() -> {});
  }
}
