package limberboard.print.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Widths and lines of text, against the widths of the typeface Inter itself. */
class FontMeasureTest {
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private final TextMeasure inter = FontMeasure.inter(13);

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void textIsAsWideAsInterMakesIt(boolean bold) {
    Font font = new Font("Inter", bold ? Font.BOLD : Font.PLAIN, 13);
    assertThat(font.getFamily()).contains("Inter");
    String all = "Does the water taste of salt? AVATAR fi ffl …–“”‘’·→éäßøÅ½°× (3 mm) WWW iii";
    assertThat(inter.width(all, bold))
        .isCloseTo(font.getStringBounds(all, EXACT).getWidth(), within(0.01));
  }

  @Test
  void boldIsWider() {
    assertThat(inter.width("Keel bolts", true)).isGreaterThan(inter.width("Keel bolts", false));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "one", "Does the water taste of salt?", "WWWWWWWWWWWWWWWWWWWWWWWW and more"})
  void linesKeepAllLettersAndTheRoom(String text) {
    List<String> lines = inter.lines(text, true, 90, Integer.MAX_VALUE);
    assertThat(lines.stream().collect(Collectors.joining()).replace(" ", ""))
        .isEqualTo(text.replace(" ", ""));
    assertThat(lines)
        .allSatisfy(line -> assertThat(inter.width(line, true)).isLessThanOrEqualTo(90));
  }

  @Test
  void aRoomNarrowerThanALetterStillEnds() {
    assertThat(inter.lines("abc", false, 1, Integer.MAX_VALUE)).containsExactly("a", "b", "c");
  }
}
