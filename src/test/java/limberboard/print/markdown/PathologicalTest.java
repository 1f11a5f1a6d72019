package limberboard.print.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import limberboard.library.page.Kind;
import limberboard.print.Layouts;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.pdf.RawPdf;
import limberboard.print.pdf.StrictXml;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import limberboard.print.xhtml.Xhtml;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Input meant to exhaust the stack or the patience: every output still comes. */
@Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class PathologicalTest {
  private static final int MANY = 20_000;
  private static final Map<String, String> INPUTS = new LinkedHashMap<>();

  static {
    INPUTS.put("quotes", ">".repeat(MANY) + " x");
    INPUTS.put("lists", nested("- "));
    INPUTS.put("numbered lists", nested("1. "));
    INPUTS.put("emphasis", "*a **a ".repeat(MANY) + "x");
    INPUTS.put("closed emphasis", "**a ".repeat(MANY) + "x" + " a**".repeat(MANY));
    INPUTS.put("links", "[".repeat(MANY) + "x" + "](here.md)".repeat(MANY));
    INPUTS.put("pictures", "![".repeat(MANY) + "x" + "](a.svg)".repeat(MANY));
    INPUTS.put("brackets", "[".repeat(MANY) + "x" + "]".repeat(MANY));
    INPUTS.put("backticks", backticks());
    INPUTS.put("one word", "x".repeat(100 * 1000));
    INPUTS.put("one heading", "# " + "x ".repeat(MANY));
    INPUTS.put(
        "wide table", "|a".repeat(500) + "|\n" + "|-".repeat(500) + "|\n" + "|x".repeat(500));
    INPUTS.put("html", "<div>".repeat(MANY) + "x");
    INPUTS.put("entities", "&amp;".repeat(MANY) + "x");
    INPUTS.put("control characters", "\u0001\u001b[31m\uFFFE\uD800 x");
  }

  static Stream<String> names() {
    return INPUTS.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyOutputStillComes(String name) throws IOException {
    List<Block> blocks =
        new MarkdownReader(new LinkTargets("articles/topics/here.md", id -> true))
            .read(INPUTS.get(name)).stream().map(MarkdownReader.Read::block).toList();
    CutPage page =
        new CutPage("x", Kind.TOPIC, "X", "", "", List.of(new Part(Part.Role.BODY, "", blocks)));
    String text = new PlainText().render(page, 80);
    assertThat(text).contains("x").doesNotContain("\u001b");
    String xhtml = new Xhtml(Pictures.none()).render(page, Look.LIGHT);
    assertThat(Layouts.heightOf(StrictXml.parse(xhtml))).isPositive();
    assertThat(RawPdf.bytes(xhtml, Pictures.none())).isNotEmpty();
  }

  private static String nested(String mark) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 300; i++) {
      text.append(" ".repeat(mark.length() * i)).append(mark).append("x\n");
    }
    return text.toString();
  }

  private static String backticks() {
    StringBuilder text = new StringBuilder("x");
    for (int i = 1; i < 500; i++) {
      text.append('e').append("`".repeat(i));
    }
    return text.toString();
  }
}
