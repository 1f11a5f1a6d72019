package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.commonmark.testutil.TestResources;
import org.commonmark.testutil.example.Example;
import org.commonmark.testutil.example.ExampleReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownTextTest {
  @Test
  void textIsTakenBlockByBlockWithoutMarkup() {
    MarkdownText text =
        MarkdownText.of(
            """
            # What *to* do

            A [link](../x.md) and `code`,
            on two lines. ![a drawing](x.svg)

            - one
            - two

              more

            > quoted

            | a | b |
            | --- | --- |
            | 1 | 2 |

            ```
            fenced
            ```

            <b>html</b> & &amp;
            """);
    assertThat(text.headings()).containsExactly("What to do");
    assertThat(text.blocks())
        .containsExactly(
            "A link and code, on two lines. a drawing",
            "one",
            "two",
            "more",
            "quoted",
            "a \u2013 b",
            "1 \u2013 2",
            "fenced",
            "<b>html</b> & &");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n\n", "---", "[", "```"})
  void markdownWithoutTextHasNoBlocks(String markdown) {
    MarkdownText text = MarkdownText.of(markdown);
    assertThat(text.headings()).isEmpty();
    assertThat(String.join("", text.blocks())).isIn("", "[");
  }

  @ParameterizedTest
  @ValueSource(strings = {"> ", "- ", "*a ", "[a](", "![", "a`", "**x"})
  void deepNestingIsRead(String part) {
    MarkdownText text = MarkdownText.of(part.repeat(3_000) + "word");
    assertThat(String.join(" ", text.blocks())).contains("word");
  }

  /** The examples of the CommonMark specification, from commonmark-test-util. */
  @Test
  void noBlockOfTheSpecificationsExamplesHasALineBreakOrIsBlank() {
    var examples = ExampleReader.readExamples(TestResources.getSpec());
    assertThat(examples).hasSizeGreaterThan(600);
    for (Example example : examples) {
      MarkdownText text = MarkdownText.of(example.getSource());
      assertThat(text.blocks()).allMatch(line -> !line.isBlank() && !line.contains("\n"));
      assertThat(text.headings()).allMatch(line -> !line.isBlank() && !line.contains("\n"));
    }
  }
}
