package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import javax.swing.JButton;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Controls beside words never squeeze them. */
class WordedLayoutTest {
  @ParameterizedTest
  @CsvSource({"280,100,false", "700,100,true", "360,200,false", "1200,200,true"})
  void wordsKeepAReadableWidth(int width, int percent, boolean beside) throws Exception {
    EventQueue.invokeAndWait(
        () -> {
          Theme.installFonts();
          Theme.apply(ThemeChoice.LIGHT, percent);
          Wrapped words =
              Text.plain("Does the water come after rain, or only under way? After rain");
          JButton change = Buttons.plain("Change", () -> {});
          JButton back = Buttons.plain("Take back", () -> {});
          Row row = Row.worded(8, words, change, back);
          row.setSize(width, 1000);
          row.setSize(width, row.getPreferredSize().height);
          row.doLayout();
          assertThat(change.getX() >= words.getWidth()).as("beside the words").isEqualTo(beside);
          int taken = change.getWidth() + back.getWidth() + 16;
          assertThat(words.getWidth()).isEqualTo(beside ? width - taken : width);
          assertThat(words.getHeight()).isGreaterThanOrEqualTo(words.getPreferredSize().height);
          assertThat(change.getY() + change.getHeight()).isLessThanOrEqualTo(row.getHeight());
          assertThat(words.getY() + words.getHeight()).isLessThanOrEqualTo(row.getHeight());
          assertThat(change.getWidth()).isEqualTo(change.getPreferredSize().width);
          Theme.apply(ThemeChoice.LIGHT, 100);
        });
  }
}
