package limberboard.library.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.library.TestWorkspace;
import limberboard.library.file.TextFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each limit: what just keeps it is read, one more is one problem, and the rest goes on. */
class LimitsTest {
  private static final String HEAD = "---\ntitle: Page\n---\n";

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write("articles/topics/good.md", "---\ntitle: A good page\n---\n");
  }

  @Test
  void everyLimitStandsInTheDescriptionOfTheFiles() throws Exception {
    String described = Files.readString(Path.of("docs/file-formats.md")).split("## Limits")[1];
    for (Field limit : Limits.class.getFields()) {
      assertThat(described).as(limit.getName()).containsPattern("\\b" + limit.get(null) + "\\b");
    }
    assertThat(described).containsPattern("\\b" + TextFile.LARGEST + "\\b");
  }

  @Test
  void charactersOfABody() {
    String line = "x".repeat(99) + "\n" + "x".repeat(98) + "\n\n";
    keeps(HEAD + line.repeat(Limits.BODY_CHARACTERS / line.length()));
    breaks(
        HEAD + line.repeat(Limits.BODY_CHARACTERS / line.length()) + "x", 4, "200001 characters");
  }

  @Test
  void linesOfABody() {
    keeps(HEAD + "\n".repeat(Limits.BODY_LINES));
    breaks(HEAD + "x\n\n".repeat(Limits.BODY_LINES / 2) + "x\n", 5004, "more than 5000 lines");
  }

  @Test
  void charactersOfALine() {
    keeps(HEAD + "\n" + "x".repeat(Limits.LINE_CHARACTERS));
    breaks(HEAD + "\n" + "x".repeat(Limits.LINE_CHARACTERS + 1), 5, "a line of 10001 characters");
  }

  @Test
  void charactersWithoutABlankLine() {
    String line = "x".repeat(99) + "\n";
    keeps(HEAD + line.repeat(Limits.RUN_CHARACTERS / 100) + " \n" + line);
    breaks(HEAD + line.repeat(Limits.RUN_CHARACTERS / 100 + 1), 504, "without a blank line");
  }

  @Test
  void angleBracketsWithoutABlankLine() {
    keeps(HEAD + "a <\n".repeat(Limits.RUN_ANGLES) + "\na <\n");
    breaks(HEAD + "a <\n".repeat(Limits.RUN_ANGLES + 1), 1004, "more than 1000 signs <");
  }

  @Test
  void attributesOfATag() {
    keepsWithWarnings(HEAD + "<a" + " b='c'".repeat(Limits.TAG_ATTRIBUTES) + ">\n");
    breaks(HEAD + "<a" + " b".repeat(Limits.TAG_ATTRIBUTES + 1), 4, "more than 100 attributes");
    breaks(HEAD + "<a" + "\nb = \"c\"".repeat(Limits.TAG_ATTRIBUTES + 1), 4, "attributes");
  }

  @Test
  void lengthOfAMailAddress() {
    String shorter = "a@" + "b.".repeat(125) + "cc";
    assertThat(shorter).hasSize(Limits.MAIL_CHARACTERS);
    keeps(HEAD + "<" + shorter + ">\n");
    breaks(HEAD + "<" + shorter + "c>\n", 4, "a mail address of 255 characters");
  }

  @Test
  void columnsOfATable() {
    keeps(HEAD + "|a".repeat(Limits.LINE_BARS) + "\n" + "|-".repeat(Limits.LINE_BARS) + "\n");
    breaks(HEAD + "|a".repeat(Limits.LINE_BARS + 1), 4, "a table of 101 columns");
  }

  @Test
  void cellsOfTables() {
    String head = "|a".repeat(50) + "\n" + "|-".repeat(50) + "\n";
    keeps(HEAD + head + "|x\n".repeat(Limits.TABLE_CELLS / 50 - 1));
    breaks(HEAD + head + "|x\n".repeat(Limits.TABLE_CELLS / 50), 105, "more than 5000 cells");
  }

  @Test
  void linksOfABody() {
    keeps(HEAD + "[a](good.md)\n".repeat(Limits.LINKS));
    breaks(HEAD + "[a](good.md)\n".repeat(Limits.LINKS + 1), 1004, "more than 1000 links");
  }

  @Test
  void lengthOfALink() {
    String target = "https://example.org/";
    String rest = "x".repeat(Limits.TARGET_CHARACTERS - target.length());
    keeps(HEAD + "[a](" + target + rest + ")\n");
    breaks(HEAD + "[a](" + target + rest + "x)\n", 4, "a link of 2001 characters");
    breaks(HEAD + "[a]: " + target + rest + "x\n\n[a]\n", 6, "a link of 2001 characters");
  }

  @Test
  void partsOfABody() {
    String line = "*a* ".repeat(100) + "\n\n";
    keeps(HEAD + line.repeat(90));
    breaks(HEAD + line.repeat(101), 202, "more than 30000 paragraphs, items and other parts");
  }

  @Test
  void entriesOfAHeader() {
    String list = "[" + "x, ".repeat(Limits.LIST_ENTRIES - 1) + "x]";
    StringBuilder header = new StringBuilder("---\ntitle: Page\n");
    for (int i = 0; i < 20; i++) {
      header.append("k").append(i).append(": ").append(list).append('\n');
    }
    breaks(header + "---\n", 22, "more than 20000 keys and values in all");
  }

  @Test
  void entriesOfAList() {
    keeps("---\ntitle: Page\nsaid-as: [" + "x, ".repeat(Limits.LIST_ENTRIES - 1) + "x]\n---\n");
    breaks(
        "---\ntitle: Page\nsaid-as: [" + "x, ".repeat(Limits.LIST_ENTRIES) + "x]\n---\n",
        3,
        "more than 1000 entries in one list");
  }

  @Test
  void lengthOfATextAndATitle() {
    keeps("---\ntitle: Page\nsummary: " + "x".repeat(Limits.TEXT_CHARACTERS) + "\n---\n");
    breaks(
        "---\ntitle: Page\nsummary: " + "x".repeat(Limits.TEXT_CHARACTERS + 1) + "\n---\n",
        3,
        "more than 5000 characters in one value");
    keeps("---\ntitle: " + "x".repeat(Limits.TITLE_CHARACTERS) + "\n---\n");
    assertThat(problems("---\ntitle: " + "x".repeat(Limits.TITLE_CHARACTERS + 1) + "\n---\n"))
        .containsExactly(
            "articles/topics/page.md:2: title: is 201 characters long; keep it under 200");
  }

  @Test
  void lengthOfAKey() {
    String key = "x".repeat(Limits.NAME_CHARACTERS);
    keeps("---\ntitle: Page\nonly-for: {" + key + ": {}}\n---\n# " + key + "\n");
    breaks("---\ntitle: Page\n" + key + "x: y\n---\n", 3, "more than 200 characters in a key");
  }

  @Test
  void depthOfAHeader() {
    breaks(
        "---\ntitle: Page\nfits: " + "{any: [".repeat(20) + "]}".repeat(20) + "\n---\n",
        2,
        "more than 30 lists and mappings within one another");
  }

  @Test
  void problemsOfAFile() {
    assertThat(problems("---\ntitle: Page\nzones: [" + "x, ".repeat(400) + "x]\n---\n"))
        .hasSize(Limits.PROBLEMS_OF_FILE + 1)
        .contains("articles/topics/page.md: warning: has 301 more problems; mend the others first");
  }

  @ParameterizedTest
  @CsvSource({
    "every: P200Y, ",
    "every: P201Y, is too long; write a period of at most 200 years",
    "every: P999999999Y, is too long; write a period of at most 200 years",
    "every: P2401M, is too long; write a period of at most 200 years",
    "every: P80000D, is too long; write a period of at most 200 years",
    "seasons: 200, ",
    "seasons: 201, is 201; write a whole number from 1 to 200",
    "seasons: 2147483647, is 2147483647; write a whole number from 1 to 200",
    "seasons: 99999999999, is 99999999999; write a whole number from 1 to 200",
    "engine-hours: 1000000000, ",
    "engine-hours: 1000000001, is out of range; write a number up to 1000000000",
    "engine-hours: Infinity, is not a number; write a number",
    "engine-hours: NaN, is not a number; write a number",
    "'every: P1Y, from-age: P201Y', is too long; write a period of at most 200 years",
  })
  void timesAndNumbers(String limit, String wrong) {
    workspace.write(
        "articles/procedures/page.md",
        "---\ntitle: Page\nsystem: hull\nwork: service\nskill: owner\nminutes: 5\ninterval: {"
            + limit
            + ", left-undone: costs, need: should}\n---\n");
    List<String> said = said();
    if (wrong == null) {
      assertThat(said).isEmpty();
    } else {
      assertThat(said).anyMatch(problem -> problem.contains(":7: ") && problem.endsWith(wrong));
    }
    assertThat(workspace.library().page("good")).isPresent();
  }

  @Test
  void aPackOfNothingIsNoPack() {
    workspace.write(
        "articles/materials/page.md",
        "---\ntitle: Page\ngroup: sealant\nunit: ml\npacks: [{name: tube, holds: 0 ml}]\n---\n");
    assertThat(said())
        .containsExactly(
            "articles/materials/page.md:5: packs[1]: a pack holds more than nothing; write what is"
                + " in it");
  }

  @Test
  void numbersAsKeysAreKeys() {
    assertThat(problems("---\ntitle: Page\n99999999999: x\n2147483648: y\n---\n"))
        .hasSize(2)
        .allMatch(problem -> problem.contains("is not a key known here"));
  }

  @Test
  void aNameLongerThanAnyIsComparedWithNone() {
    assertThat(Nearest.to("x".repeat(300_000), List.of("x".repeat(300_000)))).isEmpty();
  }

  @Test
  void foldersAndNamesThatAreOverlookedAreToldOf() throws IOException {
    Files.createDirectories(folder.resolve("articles/procedure"));
    workspace.write("articles/topics/loud.MD", HEAD);
    workspace.write("articles/stray.md", HEAD);
    assertThat(said())
        .containsExactly(
            "articles/procedure: warning: is no folder of pages, and is not read; did you mean"
                + " \"procedures\"?",
            "articles/stray.md: warning: lies in no folder of pages; move it into one of pictures,"
                + " symptoms, procedures, materials, models, cautions, topics, wordings, courses",
            "articles/topics/loud.MD: warning: is not read; let its name end in .md, in small"
                + " letters");
  }

  @Test
  void aChainOfAsManyAccessesAsMayBeIsChecked() {
    StringBuilder access = new StringBuilder("access:\n");
    for (int i = 0; i < Limits.LIST_ENTRIES; i++) {
      access.append("  - {id: a").append(i).append(", title: A, minutes: 1, needs: [a");
      access.append(i + 1 == Limits.LIST_ENTRIES ? i : i + 1).append("]}\n");
    }
    workspace.write(
        "articles/models/page.md",
        "---\ntitle: Page\nbuilt: 2010/2020\n"
            + "drawing: {profile: ../pictures/side.svg, deck: ../pictures/top.svg}\n"
            + "zones: [{id: c, title: C, deck: \"0,0 1,1 1,0\"}]\nequipment: []\n"
            + access
            + "---\n");
    assertThat(said())
        .containsExactly(
            "articles/models/page.md:1007: access[1000].needs: runs in a circle: a999 needs a999;"
                + " take one of these needs out");
  }

  private List<String> problems(String page) {
    workspace.write("articles/topics/page.md", page);
    List<String> said = said();
    assertThat(workspace.library().page("good")).isPresent();
    return said;
  }

  private List<String> said() {
    return workspace.library().problems().stream().map(Problem::toString).toList();
  }

  private void keeps(String page) {
    assertThat(problems(page)).isEmpty();
    assertThat(workspace.library().page("page")).isPresent();
  }

  private void keepsWithWarnings(String page) {
    assertThat(problems(page)).allMatch(problem -> problem.contains("warning"));
    assertThat(workspace.library().page("page")).isPresent();
  }

  private void breaks(String page, int line, String wrong) {
    List<String> said = problems(page);
    assertThat(said).hasSize(1);
    assertThat(said.get(0)).startsWith("articles/topics/page.md:" + line + ": ").contains(wrong);
    assertThat(said.get(0)).contains("; ");
    assertThat(workspace.library().page("page")).isEmpty();
  }
}
