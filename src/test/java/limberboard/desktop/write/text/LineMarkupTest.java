package limberboard.desktop.write.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.desktop.write.text.LineMarkup.Sort;
import org.junit.jupiter.api.Test;

/** Which parts of a text are shown apart. */
class LineMarkupTest {
  private static final String TEXT =
      "---\ntitle: Bends # short\nsaid-as: ['a # b']\n  - use: rope\n---\n# One\n"
          + "1. Tie **it** [so](so.md), see `x`\n```\n# not a heading\n```\n---\n";

  private static List<String> parts(int line) {
    LineMarkup.Line at = LineMarkup.of(TEXT).get(line);
    return at.spans().stream()
        .map(each -> each.sort() + " " + at.text().substring(each.from(), each.to()))
        .toList();
  }

  @Test
  void aHeaderHasKeysAndRemarks() {
    assertThat(parts(0)).containsExactly("QUIET ---");
    assertThat(parts(1)).containsExactly("KEY title:", "QUIET # short");
    assertThat(parts(2)).containsExactly("KEY said-as:");
    assertThat(parts(3)).containsExactly("KEY use:");
    assertThat(parts(4)).containsExactly("QUIET ---");
  }

  @Test
  void aTextHasHeadingsItemsLinksAndVerbatimLines() {
    assertThat(parts(5)).containsExactly("HEADING # One");
    assertThat(parts(6))
        .containsExactly("ITEM 1.", "STRONG **it**", "LINK [so](so.md)", "QUIET `x`");
    assertThat(LineMarkup.of(TEXT).get(8).spans())
        .extracting(LineMarkup.Span::sort)
        .containsExactly(Sort.QUIET);
    assertThat(parts(10)).as("a rule is no header").isEmpty();
  }

  @Test
  void allLinesTogetherAreTheText() {
    List<String> lines = LineMarkup.of(TEXT).stream().map(LineMarkup.Line::text).toList();
    assertThat(String.join("\n", lines)).isEqualTo(TEXT);
  }
}
