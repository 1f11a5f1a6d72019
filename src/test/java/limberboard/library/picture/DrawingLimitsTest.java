package limberboard.library.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawingLimitsTest {
  private static Optional<String> wrong(String inside) {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
            + " viewBox=\"0 0 100 100\">"
            + inside
            + "</svg>";
    return PictureSafety.wrong(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void anOrdinaryDrawingIsTaken() {
    assertThat(
            wrong(
                "<defs><marker id='m' markerWidth='6' markerHeight='6'><path d='M0"
                    + " 0h3'/></marker><pattern id='p' patternUnits='userSpaceOnUse' width='8'"
                    + " height='8'><path d='M0 0l8 8'/></pattern><g id='cleat'><rect width='5'"
                    + " height='5'/></g><linearGradient id='g'/></defs><path d='M1 1L50 50'"
                    + " stroke-dasharray='4 3' marker-end='url(#m)'/><rect width='50' height='50'"
                    + " fill='url(#p)'/><use href='#cleat' x='3'/><g transform='rotate(30)"
                    + " scale(2)'><text font-size='15'>Cleat</text></g><path fill='#990000'"
                    + " style='stroke-width: 2; fill: url(#g)' d='M-1e3.5-.5'/>"))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          <filter id='f'><feGaussianBlur stdDeviation='9999'/></filter> | has a <filter>
          <mask id='m'/>                                              | has a <mask>
          <rect width='1e9' height='1'/>                              | has a width beyond 100000
          <path d='M0 0 L 99999999 1'/>                               | has a d beyond 100000
          <text font-size='50000'>x</text>                            | has a font-size over 1000
          <text style='font-size: 50000px'>x</text>                   | has a font-size over 1000
          <path stroke-width='1e5' d='M0 0h1'/>                       | has a stroke-width over 1000
          <path stroke-dasharray='0.001' d='M0 0h9999'/>              | has dashes shorter than 0.5
          <marker markerWidth='99999'/>                               | has a markerwidth over 1000
          <pattern patternUnits='userSpaceOnUse' width='90000' height='1'/> | has a pattern
          <pattern patternUnits='userSpaceOnUse' width='0.001' height='9'/> | has a pattern
          <g transform='scale(50)'><g transform='scale(50)'/></g>     | scales a part more than 100
          <g transform='matrix(500 0 0 500 0 0)'/>                    | scales a part more than 100
          <svg width='99999' height='1'/>                             | is wider or higher than
          <g id='a'><use href='#a'/></g>                              | uses itself
          <g id='a'><use xlink:href='#b'/></g><g id='b'><use xlink:href='#a'/></g> | uses itself
          <pattern id='p' width='1' height='1'><rect fill='url(#p)'/></pattern>    | uses itself
          """)
  void whatWouldExhaustAMachineIsRefused(String inside, String why) {
    assertThat(wrong(inside)).hasValueSatisfying(told -> assertThat(told).contains(why));
  }

  @Test
  void partsThatUsePartsAreCountedOut() {
    StringBuilder laughs = new StringBuilder("<g id='l0'><rect/></g>");
    for (int i = 1; i < 12; i++) {
      laughs.append("<g id='l").append(i).append("'>");
      laughs.append(("<use href='#l" + (i - 1) + "'/>").repeat(10)).append("</g>");
    }
    assertThat(wrong(laughs.toString()))
        .hasValueSatisfying(told -> assertThat(told).contains("comes to more than 200000"));
    String backwards =
        java.util.stream.IntStream.range(0, 40)
            .mapToObj(i -> "<g id='d" + i + "'><use href='#d" + (i + 1) + "'/></g>")
            .collect(java.util.stream.Collectors.joining());
    assertThat(wrong(backwards)).hasValueSatisfying(told -> assertThat(told).contains("16 deep"));
    assertThat(wrong("<rect/>".repeat(DrawingLimits.MOST_ELEMENTS + 1)))
        .hasValueSatisfying(told -> assertThat(told).contains("elements"));
    String marked =
        "<marker id='m'>"
            + "<rect/>".repeat(100)
            + "</marker><path marker-mid='url(#m)' d='M0 0"
            + " 1 1".repeat(5000)
            + "'/>";
    assertThat(wrong(marked)).isPresent();
  }
}
