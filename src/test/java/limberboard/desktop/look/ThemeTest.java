package limberboard.desktop.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import javax.swing.JLabel;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ThemeTest {
  @AfterEach
  void usual() throws Exception {
    EventQueue.invokeAndWait(() -> Theme.apply(ThemeChoice.LIGHT, 100));
  }

  private static <T> T on(ThemeChoice theme, int percent, java.util.concurrent.Callable<T> look)
      throws Exception {
    java.util.concurrent.FutureTask<T> task =
        new java.util.concurrent.FutureTask<>(
            () -> {
              Theme.installFonts();
              Theme.apply(theme, percent);
              return look.call();
            });
    EventQueue.invokeAndWait(task);
    return task.get();
  }

  @Test
  void everythingIsSetInInter() throws Exception {
    Font font = on(ThemeChoice.LIGHT, 100, () -> new JLabel("Bilge").getFont());
    assertThat(font.getFamily()).isEqualTo("Inter");
    assertThat(font.getSize()).isEqualTo(14);
  }

  @Test
  void textTwiceAsLargeIsTwiceAsWide() throws Exception {
    FontRenderContext context = new FontRenderContext(null, true, true);
    double usual =
        on(ThemeChoice.LIGHT, 100, () -> new JLabel().getFont())
            .getStringBounds("Stern gland", context)
            .getWidth();
    double large =
        on(ThemeChoice.LIGHT, 200, () -> new JLabel().getFont())
            .getStringBounds("Stern gland", context)
            .getWidth();
    assertThat(large / usual).isBetween(1.95, 2.05);
  }

  @Test
  void textOnTheScreenTakesTheColourOfTheNewTheme() throws Exception {
    Wrapped text = on(ThemeChoice.LIGHT, 100, () -> Text.plain("Bilge"));
    assertThat(text.getForeground())
        .isEqualTo(ThemeChoice.LIGHT.lookAndFeel().getDefaults().getColor("Limberboard.ink"));
    on(
        ThemeChoice.DARK,
        100,
        () -> {
          javax.swing.SwingUtilities.updateComponentTreeUI(text);
          return text;
        });
    assertThat(text.getForeground())
        .isEqualTo(ThemeChoice.DARK.lookAndFeel().getDefaults().getColor("Limberboard.ink"));
    assertThat(Theme.isDark()).isTrue();
  }
}
