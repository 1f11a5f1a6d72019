package limberboard.desktop.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import javax.swing.UIDefaults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Holds the contrast of text and background in both themes to WCAG 2.1, success criterion 1.4.3
 * (level AA): at least 4.5 to 1 for text of any size. Formulas: WCAG 2.1, definitions of
 * <i>contrast ratio</i> and <i>relative luminance</i>. Text of controls that cannot be used is
 * exempt there and here.
 */
class WindowContrastTest {
  private static final double LEAST = 4.5;

  @ParameterizedTest(name = "{2}")
  @CsvFileSource(resources = "contrast-pairs.csv", numLinesToSkip = 1)
  void textStandsOutFromItsBackground(String text, String background, String where) {
    for (ThemeChoice theme : ThemeChoice.values()) {
      UIDefaults defaults = theme.lookAndFeel().getDefaults();
      Color ink = defaults.getColor(text);
      Color ground = defaults.getColor(background);
      assertThat(ink).as("%s in %s", text, theme).isNotNull();
      assertThat(ground).as("%s in %s", background, theme).isNotNull();
      assertThat(ratio(ink, ground))
          .as("%s on %s in the %s theme: %s", text, background, theme.title(), where)
          .isGreaterThanOrEqualTo(LEAST);
    }
  }

  /** Worked examples: black on white is 21 to 1 (WCAG 2.1); #767676 on white is 4.54 to 1. */
  @Test
  void theRatioIsComputedAsTheGuidelinesDo() {
    assertThat(ratio(Color.BLACK, Color.WHITE))
        .isEqualTo(21, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(ratio(new Color(0x767676), Color.WHITE))
        .isEqualTo(4.54, org.assertj.core.data.Offset.offset(0.005));
    assertThat(ratio(Color.WHITE, new Color(0x767676)))
        .isEqualTo(ratio(new Color(0x767676), Color.WHITE));
  }

  private static double ratio(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
