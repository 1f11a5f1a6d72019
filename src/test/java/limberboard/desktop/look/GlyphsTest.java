package limberboard.desktop.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Font;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every character that the window or the library says can be shown by Inter, the typeface that the
 * program brings along, in each weight: what it lacks would come up as an empty box.
 */
class GlyphsTest {
  private static final Path SAID = Path.of("src/main/java/limberboard");

  /** Packages whose words come onto the screen. */
  private static final List<String> SPEAKING =
      List.of("desktop", "trace", "upkeep", "workings", "rigging", "library", "boat");

  private static final Pattern LITERAL = Pattern.compile("\"((?:\\\\.|[^\"\\\\])*)\"");
  private static final Pattern ESCAPED = Pattern.compile("\\\\u+([0-9a-fA-F]{4})");
  private static final List<Font> WEIGHTS =
      List.of(
          new Font(FlatInterFont.FAMILY, Font.PLAIN, 14),
          new Font(FlatInterFont.FAMILY, Font.BOLD, 14),
          new Font(FlatInterFont.FAMILY_SEMIBOLD, Font.PLAIN, 14));

  @BeforeAll
  static void fonts() {
    Theme.installFonts();
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static Set<String> lacking(String text) {
    Set<String> lacking = new TreeSet<>();
    text.codePoints()
        .filter(point -> !Character.isISOControl(point))
        .filter(point -> WEIGHTS.stream().anyMatch(font -> !font.canDisplay(point)))
        .forEach(point -> lacking.add(String.format("U+%04X", point)));
    return lacking;
  }

  /** What stands between quotation marks on lines that are no comment. */
  static String said(String source) {
    StringBuilder said = new StringBuilder();
    source
        .lines()
        .filter(line -> !line.strip().startsWith("*") && !line.strip().startsWith("//"))
        .forEach(
            line -> {
              Matcher literal = LITERAL.matcher(line);
              while (literal.find()) {
                said.append(
                    ESCAPED
                        .matcher(literal.group(1))
                        .replaceAll(
                            found ->
                                Matcher.quoteReplacement(
                                    Character.toString(Integer.parseInt(found.group(1), 16)))));
              }
            });
    return said.toString();
  }

  @Test
  void theFontIsInterAndLacksWhatItIsKnownToLack() {
    assertThat(WEIGHTS).allSatisfy(font -> assertThat(font.getFamily()).startsWith("Inter"));
    assertThat(lacking("abc \u2026 \u2212 \u00bd \u00a0")).isEmpty();
    assertThat(lacking(said("plain(\"More \\u25be\", open)"))).containsExactly("U+25BE");
  }

  @Test
  void everyCharacterThatTheProgramSaysCanBeShown() throws IOException {
    Map<String, Set<String>> lacking = new TreeMap<>();
    for (String speaking : SPEAKING) {
      List<Path> files = files(SAID.resolve(speaking), ".java");
      assertThat(files).as(speaking).isNotEmpty();
      for (Path file : files) {
        Set<String> found = lacking(said(Files.readString(file)));
        if (!found.isEmpty()) {
          lacking.put(file.toString(), found);
        }
      }
    }
    assertThat(lacking).isEmpty();
  }

  @Test
  void everyCharacterOfThePagesCanBeShown() throws IOException {
    List<Path> pages = files(Path.of("articles"), ".md");
    assertThat(pages).hasSizeGreaterThan(100);
    Map<String, Set<String>> lacking = new TreeMap<>();
    for (Path page : pages) {
      Set<String> found = lacking(Files.readString(page));
      if (!found.isEmpty()) {
        lacking.put(page.toString(), found);
      }
    }
    assertThat(lacking).isEmpty();
  }
}
