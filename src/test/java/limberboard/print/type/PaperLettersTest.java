package limberboard.print.type;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.library.page.Kind;
import limberboard.print.PdfText;
import limberboard.print.SmallYard;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Characters that the paper's typeface lacks are never dropped without a word. */
class PaperLettersTest {
  private final SmallYard yard = new SmallYard();

  private String onPaper(String text) {
    CutPage page =
        new CutPage(
            "letters",
            Kind.TOPIC,
            "Letters",
            "",
            "",
            List.of(
                new Part(
                    Part.Role.BODY,
                    "",
                    List.of(new Block.Paragraph(List.of(new Inline.Text(text)))))));
    return PdfText.of(yard, page);
  }

  @ParameterizedTest
  @CsvSource({
    "船, 8239",
    "日本, 65E5",
    "배, BC30",
    "שלום, 05E9",
    "قارب, 0642",
    "เรือ, 0E40",
    "🛥, 1F6E5"
  })
  void anotherScriptStandsAsBoxesAndIsNamedAtTheHead(String word, String code) {
    String text = onPaper("The " + word + " is wet");
    assertThat(text)
        .contains("The □")
        .contains("is wet")
        .contains("cannot be printed here and stand as □")
        .contains("U+" + code);
    assertThat(text.indexOf("cannot be printed")).isLessThan(text.indexOf("is wet"));
  }

  @Test
  void boxesToTickAreDrawnAndNothingIsSaid() {
    assertThat(onPaper("☐ greased ☑ looked at"))
        .contains("□ greased ■ looked at")
        .doesNotContain("cannot be printed");
  }

  @Test
  void lettersThatAreThereStay() {
    assertThat(onPaper("Größe ½ ≤ 5 °C → Ёлка αβ č ✓"))
        .contains("Größe ½ ≤ 5 °C → Ёлка αβ č ✓")
        .doesNotContain("cannot be printed");
  }
}
