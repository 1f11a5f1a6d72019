package limberboard.print.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
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
import limberboard.print.xhtml.Xhtml;
import org.commonmark.testutil.TestResources;
import org.commonmark.testutil.example.Example;
import org.commonmark.testutil.example.ExampleReader;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;

/**
 * The examples of the CommonMark specification 0.31.2 (CC BY-SA 4.0, carried by
 * commonmark-test-util): each gives well-formed XHTML that lays out, and, where the specification's
 * own HTML can be compared, the same words.
 */
class CommonMarkSpecTest {
  /** Sections in which we differ on purpose: HTML is text, links and pictures are limited. */
  private static final Set<String> OTHER_WORDS =
      Set.of(
          "HTML blocks", "Raw HTML", "Images", "Links", "Autolinks", "Link reference definitions");

  private final List<Example> examples = ExampleReader.readExamples(TestResources.getSpec());

  @TestFactory
  Stream<DynamicTest> everyExampleGivesWellFormedXhtmlThatLaysOut() {
    return examples.stream()
        .map(
            example ->
                DynamicTest.dynamicTest(
                    name(example),
                    () -> {
                      Document document = StrictXml.parse(xhtml(example.getSource()));
                      assertThat(Layouts.heightOf(document)).isPositive();
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everySectionBecomesAPdf() {
    Map<String, String> sections = new LinkedHashMap<>();
    examples.forEach(
        example ->
            sections.merge(example.getSection(), example.getSource(), (a, b) -> a + "\n" + b));
    return sections.entrySet().stream()
        .map(
            section ->
                DynamicTest.dynamicTest(
                    section.getKey(),
                    () -> {
                      byte[] pdf = RawPdf.bytes(xhtml(section.getValue()), Pictures.none());
                      assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
                    }));
  }

  @TestFactory
  Stream<DynamicTest> theWordsAreTheSpecifications() {
    return examples.stream()
        .filter(example -> !OTHER_WORDS.contains(example.getSection()))
        .filter(example -> !mentionsWhatWeShowOtherwise(example.getHtml()))
        .map(
            example ->
                DynamicTest.dynamicTest(
                    name(example),
                    () ->
                        assertThat(words(body(example.getSource())))
                            .isEqualTo(words(stripped(example.getHtml())))));
  }

  private static boolean mentionsWhatWeShowOtherwise(String html) {
    return html.contains("<a ")
        || html.contains("<img")
        || html.contains("<!--")
        || html.replaceAll(
                "</?(p|h[1-6]|em|strong|code|pre|ul|ol|li|blockquote|hr|br)\\b[^>]*>", "")
            .contains("<");
  }

  /** The section and the example's number in the specification, where they are counted through. */
  private String name(Example example) {
    return example.getSection() + " " + (examples.indexOf(example) + 1);
  }

  private static String xhtml(String markdown) {
    List<Block> blocks =
        new MarkdownReader(new LinkTargets("articles/topics/x.md", id -> true))
            .read(markdown).stream().map(MarkdownReader.Read::block).toList();
    CutPage page =
        new CutPage(
            "x", Kind.TOPIC, "Example", "", "", List.of(new Part(Part.Role.BODY, "", blocks)));
    return new Xhtml(Pictures.none()).render(page, Look.LIGHT);
  }

  private static String body(String markdown) throws IOException {
    Document document = StrictXml.parse(xhtml(markdown));
    var divs = document.getElementsByTagName("div");
    return divs.item(2).getTextContent();
  }

  private static String stripped(String html) {
    return html.replace("→", "\t")
        .replaceAll("<[^>]*>", " ")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  /** Without any white space, since block elements stand for some of it. */
  private static String words(String text) {
    return text.codePoints()
        .filter(c -> !Character.isWhitespace(c) && c != '\u00A0')
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }
}
