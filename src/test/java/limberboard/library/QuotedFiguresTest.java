package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.page.Kind;
import limberboard.library.page.Symptom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a figure says now stands wherever a page quotes it; files stay as they are. */
class QuotedFiguresTest {
  private static final String GLUE =
      "---\ntitle: Glue\ngroup: adhesive\nunit: ml\npacks: [{name: tin, holds: 500 ml}]\n"
          + "figures:\n"
          + "  walk-on: {title: Walked on after, value: 24 h, source: a handbook}\n"
          + "---\nSets. Walk on it after [24 h](#walk-on).\n";

  @TempDir Path folder;
  private TestWorkspace workspace;
  private LibraryReader reader;

  @BeforeEach
  void makePages() {
    workspace = new TestWorkspace(folder);
    workspace.write("articles/materials/glue.md", GLUE);
    reader = new LibraryReader(workspace.folders());
  }

  private void change(String to) {
    workspace.write("articles/materials/glue.md", GLUE.replace("value: 24 h", "value: " + to));
  }

  private String topic(String body) {
    return "---\ntitle: A topic\n---\n" + body;
  }

  private String bodyOf(String id) throws IOException {
    return reader.read().page(id).orElseThrow().body();
  }

  @Test
  void changesWithTheFigureAndLeavesTheFileAlone() throws IOException {
    String text = topic("Wait [24 h](../materials/glue.md#walk-on), then walk.\n");
    Path file = workspace.write("articles/topics/a.md", text);
    assertThat(bodyOf("a")).isEqualTo("Wait [24 h](../materials/glue.md#walk-on), then walk.\n");
    change("36 h");
    assertThat(bodyOf("a")).isEqualTo("Wait [36 h](../materials/glue.md#walk-on), then walk.\n");
    assertThat(bodyOf("glue")).contains("after [36 h](#walk-on)");
    assertThat(Files.readString(file)).isEqualTo(text);
    assertThat(reader.read().problems())
        .extracting(Object::toString)
        .containsExactly(
            "articles/materials/glue.md:9: warning: figure: says \"24 h\", and glue.md says \"36"
                + " h\" at walk-on; write 36 h",
            "articles/topics/a.md:4: warning: figure: says \"24 h\", and glue.md says \"36 h\" at"
                + " walk-on; write 36 h");
    change("24 h");
    assertThat(reader.read().problems()).isEmpty();
  }

  @Test
  void whatSaysTheSameStaysInThePagesOwnWords() throws IOException {
    workspace.write(
        "articles/topics/a.md",
        topic(
            "Wait [a **day**](../materials/glue.md#walk-on) or [1440 min][w].\n\n"
                + "[w]: ../materials/glue.md#walk-on\n"));
    assertThat(bodyOf("a")).contains("[a **day**](", "[1440 min][w]");
    assertThat(reader.read().problems()).isEmpty();
    change("2 h");
    assertThat(bodyOf("a")).contains("Wait [2 h](../materials/glue.md#walk-on) or [2 h][w].");
  }

  @Test
  void tablesListsAndTwoLinesKeepTheirForm() throws IOException {
    change("2 h");
    workspace.write(
        "articles/topics/a.md",
        topic(
            "| a | b |\n"
                + "| --- | --- |\n"
                + "| x | [24 h](../materials/glue.md#walk-on) |\n\n"
                + "> - wait [24\n"
                + ">   h](../materials/glue.md#walk-on) there\n"
                + "> - [](../materials/glue.md#walk-on)\n\n"
                + "`[24 h](../materials/glue.md#walk-on)`\n"));
    assertThat(bodyOf("a"))
        .contains("| x | [2 h](../materials/glue.md#walk-on) |")
        .contains("> - wait [2 h\n>   ](../materials/glue.md#walk-on) there")
        .contains("> - [2 h](../materials/glue.md#walk-on)")
        .contains("`[24 h](../materials/glue.md#walk-on)`");
  }

  @Test
  void headersQuoteToo() throws IOException {
    workspace.write(
        "articles/symptoms/s.md",
        "---\n"
            + "title: Loose\n"
            + "zones: [cabin]\n"
            + "causes:\n"
            + "  - {id: old, title: Old, weight: 1, mend: mend}\n"
            + "checks:\n"
            + "  - id: c\n"
            + "    ask: Fast?\n"
            + "    how: Wait [24 h](../materials/glue.md#walk-on), then pull.\n"
            + "    minutes: 5\n"
            + "    answers: [yes-it-is, no]\n"
            + "    finds: {yes-it-is: {old: often}}\n"
            + "---\n");
    assertThat(how()).isEqualTo("Wait 24 h, then pull.");
    assertThat(reader.read().linksTo("glue")).contains("s");
    assertThat(reader.read().problems()).isEmpty();
    change("36 h");
    assertThat(how()).isEqualTo("Wait 36 h, then pull.");
    assertThat(reader.read().problems())
        .extracting(Object::toString)
        .anyMatch(
            said ->
                said.startsWith("articles/symptoms/s.md:9: warning: checks[1].how: says \"24 h\""));
  }

  private String how() throws IOException {
    Symptom symptom = reader.read().symptom("s").orElseThrow().details();
    return symptom.checks().get(0).how();
  }

  @Test
  void whatCannotBeMeantIsShownAsWritten() throws IOException {
    String body =
        "# After [24 h](../materials/glue.md#walk-on)\n\n"
            + "[24 N·m](../materials/glue.md#walk-on) [the glue](../materials/glue.md#walk-on)"
            + " [12 h](../materials/glue.md#walk-onn) [12 h](../materials/gone.md#walk-on)\n";
    workspace.write("articles/topics/a.md", topic(body));
    change("36 h");
    assertThat(bodyOf("a")).isEqualTo(body);
  }

  @Test
  void aFigureThatIsBrokenChangesNothingAndIsToldOnce() throws IOException {
    workspace.write("articles/topics/a.md", topic("[24 h](../materials/glue.md#walk-on)\n"));
    change("soon");
    assertThat(bodyOf("a")).isEqualTo("[24 h](../materials/glue.md#walk-on)\n");
    assertThat(reader.read().problems())
        .isNotEmpty()
        .allSatisfy(problem -> assertThat(problem.file()).isEqualTo("articles/materials/glue.md"));
    assertThat(reader.read().page("glue")).isPresent();
  }

  @Test
  void aPageBeingTypedIsCheckedAndShownTheSameWay() throws IOException {
    change("36 h");
    reader.read();
    String text = topic("[24 h](../materials/glue.md#walk-on)\n");
    TypingReader.Typed typed = reader.typing("articles/topics/b.md", Kind.TOPIC).read(text);
    assertThat(typed.page().orElseThrow().body()).contains("[36 h](");
    assertThat(typed.problems()).extracting(problem -> problem.line()).containsExactly(4);
    TypingReader glue = reader.typing("articles/materials/glue.md", Kind.MATERIAL);
    assertThat(glue.read(GLUE).problems()).isEmpty();
    assertThat(glue.read(GLUE.replace("value: 24 h", "value: 2 h")).page().orElseThrow().body())
        .contains("[2 h](#walk-on)");
  }
}
