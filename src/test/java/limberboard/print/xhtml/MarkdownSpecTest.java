package limberboard.print.xhtml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import limberboard.print.drawing.Markup;
import limberboard.print.markdown.LinkTargets;
import limberboard.print.markdown.MarkdownReader;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Runs the examples of {@code markdown.spec.md}; {@code ~} stands for a space without a break. */
class MarkdownSpecTest {
  private static final Pattern PART =
      Pattern.compile(
          "^## ([^\\n]+)$|^```\\n(.*?)\\n\\.\\n(.*?)\\n```$", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Set<String> PAGES = Set.of("seal", "here");

  @TestFactory
  Stream<DynamicTest> examples() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    String section = "";
    int number = 0;
    Matcher matcher = PART.matcher(spec());
    while (matcher.find()) {
      if (matcher.group(1) != null) {
        section = matcher.group(1);
        number = 0;
      } else {
        number++;
        String markdown = matcher.group(2);
        String expected = matcher.group(3).replace('~', '\u00A0');
        tests.add(
            DynamicTest.dynamicTest(
                section + " " + number, () -> assertThat(rendered(markdown)).isEqualTo(expected)));
      }
    }
    assertThat(tests).hasSizeGreaterThan(15);
    return tests.stream();
  }

  private static String spec() throws IOException {
    try (InputStream in = MarkdownSpecTest.class.getResourceAsStream("markdown.spec.md")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String rendered(String markdown) {
    Markup out = new Markup();
    BlockXhtml blocks = new BlockXhtml(out, Pictures.none(), Look.LIGHT);
    new MarkdownReader(new LinkTargets("articles/topics/here.md", PAGES::contains))
        .read(markdown)
        .forEach(read -> read.block().to(blocks));
    return out.toString().strip();
  }
}
