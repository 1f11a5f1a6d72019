package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tools take two lines at most; what has no room is in a menu. */
class ToolsTest {
  @ParameterizedTest
  @CsvSource({"1000,100,4", "400,100,4", "330,100,2", "330,200,0"})
  void whatHasNoRoomIsInTheMenu(int width, int percent, int least) throws Exception {
    EventQueue.invokeAndWait(
        () -> {
          Theme.installFonts();
          Theme.apply(ThemeChoice.LIGHT, percent);
          List<JButton> seldom =
              Stream.of("Print ...", "Save as PDF ...", "Save as CSV ...", "Fold again")
                  .map(words -> Buttons.plain(words, () -> {}))
                  .toList();
          JButton always = Buttons.plain("Where I am", () -> {});
          Tools tools = new Tools("more", 8, List.of(always), seldom);
          tools.setSize(width, 500);
          int height = tools.getPreferredSize().height;
          tools.doLayout();
          long shown = seldom.stream().filter(JButton::isVisible).count();
          JButton more = (JButton) tools.getComponent(tools.getComponentCount() - 1);
          assertThat(shown).isGreaterThanOrEqualTo(least);
          assertThat(more.isVisible()).isEqualTo(shown < seldom.size());
          assertThat(always.isVisible()).isTrue();
          assertThat(height).isLessThanOrEqualTo(2 * always.getPreferredSize().height + 8);
          Theme.apply(ThemeChoice.LIGHT, 100);
        });
  }
}
