package limberboard.history.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TextPartsTest {
  @Test
  void everyFileOfTheDemoIsItsPartsToTheLetter() throws IOException {
    List<Path> files;
    try (Stream<Path> articles = Files.walk(Path.of("articles"));
        Stream<Path> boats = Files.walk(Path.of("demo-boats"))) {
      files =
          Stream.concat(articles, boats)
              .filter(file -> file.toString().matches(".*\\.(md|yaml|csv)"))
              .toList();
    }
    assertThat(files).hasSizeGreaterThan(500);
    for (Path file : files) {
      String text = Files.readString(file);
      for (String form : List.of(text, text.replace("\n", "\r\n"), "\uFEFF" + text)) {
        TextParts parts = TextParts.of(file.toString(), form);
        assertThat(parts.text()).as(file.toString()).isEqualTo(form);
        if (file.startsWith("articles") && file.toString().endsWith(".md")) {
          assertThat(parts.value("title")).as(file.toString()).isPresent();
        }
      }
    }
  }

  @Test
  void remarksAndBlankLinesBelongToTheKeyBelowThem() {
    TextParts parts =
        TextParts.ofYaml("# first\na: 1\n\n# of b\nb:\n  - x\n  # of y\n  - y\n\n# the end\n");
    assertThat(parts.header())
        .containsExactly(
            java.util.Map.entry("a", "# first\na: 1\n"),
            java.util.Map.entry("b", "\n# of b\nb:\n  - x\n  # of y\n  - y\n"));
    assertThat(parts.closing()).isEqualTo("\n# the end\n");
  }

  @Test
  void aHeaderThatIsNoneIsBody() {
    for (String text :
        List.of(
            "",
            "No header.\n",
            "---\ntitle: never closed\n",
            "---\n{title: in one line}\n---\n",
            "---\ntitle: a\ntitle: b\n---\n",
            "---\ntitle: [\n---\n",
            "---\na: 1\rb: 2\n---\n")) {
      TextParts parts = TextParts.ofPage(text);
      assertThat(parts.header()).as(text).isEmpty();
      assertThat(parts.text()).isEqualTo(text);
    }
  }

  @Test
  void bodiesAreCutWherePeopleChangeThem() {
    TextParts parts =
        TextParts.ofPage(
            "# A\nOne\nline.\n\n- x\n  more\n- y\n1. z\n\n```\nno\n\ncut\n```\n|a|\n|b|\n");
    assertThat(parts.body())
        .containsExactly(
            "# A\n",
            "One\nline.\n",
            "\n",
            "- x\n  more\n",
            "- y\n",
            "1. z\n",
            "\n",
            "```\nno\n\ncut\n```\n",
            "|a|\n",
            "|b|\n");
  }
}
