package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ControlsTest {
  @Test
  void everyControlCharacterIsMadeVisible() {
    for (char c = 0; c < '\u00a0'; c++) {
      boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
      assertThat(Controls.is(c)).as("U+%04X", (int) c).isEqualTo(control);
      assertThat(Character.isISOControl(Controls.visible(c))).isEqualTo(c == '\n' || c == '\t');
    }
    assertThat(Controls.visible("\u001b[2J\u0007")).isEqualTo("␛[2J␇");
    assertThat(Controls.visible("a\u009bb\u202ec\u007f")).isEqualTo("a\ufffdb\ufffdc␡");
  }

  @Test
  void otherTextStaysAsItIs() {
    String text = "Größe ½, 5 °C\n\tשלום 船 🛥";
    assertThat(Controls.visible(text)).isSameAs(text);
  }
}
