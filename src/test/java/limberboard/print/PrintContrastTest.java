package limberboard.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.print.xhtml.Xhtml;
import org.junit.jupiter.api.Test;

/**
 * Every letter's colour in the style sheet against the ground of its looks: at least 4.5 to 1, by
 * the formula and the level AA of WCAG 2.1 (success criterion 1.4.3).
 */
public class PrintContrastTest {
  private static final double LEAST = 4.5;
  private static final Pattern RULE = Pattern.compile("([^{}@]+)\\{([^{}]*)}");
  private static final Pattern COLOUR = Pattern.compile("(?<![-a-z])color: (#[0-9a-f]{6})");
  private static final Pattern GROUND = Pattern.compile("background-color: (#[0-9a-f]{6})");
  private static final List<String> LIGHT_GROUNDS = List.of("#faf7f0", "#ffffff");
  private static final List<String> DARK_GROUNDS = List.of("#14202b");

  @Test
  void lettersStandOutFromTheirGround() throws IOException {
    List<String> tooFaint = new ArrayList<>();
    int compared = 0;
    Matcher rule = RULE.matcher(css());
    while (rule.find()) {
      Matcher colour = COLOUR.matcher(rule.group(2));
      while (colour.find()) {
        for (String ground : grounds(rule.group(1), rule.group(2))) {
          compared++;
          if (contrast(colour.group(1), ground) < LEAST) {
            tooFaint.add(rule.group(1).strip() + ": " + colour.group(1) + " on " + ground);
          }
        }
      }
    }
    assertThat(tooFaint).isEmpty();
    assertThat(compared).isGreaterThan(15);
  }

  @Test
  void blackOnWhiteIsTwentyOneToOne() {
    assertThat(contrast("#000000", "#ffffff")).isEqualTo(21.0);
    assertThat(contrast("#777777", "#ffffff")).isLessThan(LEAST);
  }

  private static List<String> grounds(String selectors, String declarations) {
    Matcher own = GROUND.matcher(declarations);
    if (own.find()) {
      return List.of(own.group(1));
    }
    return selectors.contains(".dark") ? DARK_GROUNDS : LIGHT_GROUNDS;
  }

  public static double contrast(String one, String other) {
    double first = luminance(Color.decode(one));
    double second = luminance(Color.decode(other));
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static String css() throws IOException {
    try (InputStream in = Xhtml.class.getResourceAsStream("page.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
