package limberboard.print.type;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The estimate of widths, against the widths of the typeface Inter itself. */
class TextWidthTest {
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void noLetterOfInterIsWiderThanEstimated(boolean bold) {
    InterFonts.registerForPainting();
    Font font = new Font("Inter", bold ? Font.BOLD : Font.PLAIN, 100);
    assertThat(font.getFamily()).contains("Inter");
    List<String> letters =
        IntStream.concat(IntStream.rangeClosed(' ', '~'), "…–“”‘’·→éäßøÅ½°×".chars())
            .mapToObj(Character::toString)
            .toList();
    assertThat(letters)
        .allSatisfy(
            letter ->
                assertThat(TextWidth.of(letter, 100, bold))
                    .as(letter)
                    .isGreaterThanOrEqualTo(font.getStringBounds(letter, EXACT).getWidth()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "one", "Does the water taste of salt?", "WWWWWWWWWWWWWWWWWWWWWWWW and more"})
  void linesKeepAllLettersAndTheRoom(String text) {
    List<String> lines = TextWidth.wrap(text, 13, true, 90);
    assertThat(lines.stream().collect(Collectors.joining()).replace(" ", ""))
        .isEqualTo(text.replace(" ", ""));
    assertThat(lines)
        .allSatisfy(line -> assertThat(TextWidth.of(line, 13, true)).isLessThanOrEqualTo(90));
  }

  @Test
  void aRoomNarrowerThanALetterStillEnds() {
    assertThat(TextWidth.wrap("abc", 13, false, 1)).containsExactly("a", "b", "c");
  }
}
