package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SearchWordsTest {
  @TempDir Path folder;
  private SmallSearchWorkspace workspace;

  @BeforeEach
  void make() {
    workspace = new SmallSearchWorkspace(folder);
  }

  private SearchWords read() {
    return SearchWords.read(workspace.folders());
  }

  @Test
  void groupsAndSpellingsAreRead() {
    workspace.synonyms("# nautical", "", "Bow Cabin,  fore   peak # a comment", "pump,bilge pump");
    workspace.spellings("\uFEFFHydraulic: hydrolic, hidraulic", "fore hatch: forhatch");
    assertThat(read().groups())
        .containsExactly(List.of("bow cabin", "fore peak"), List.of("pump", "bilge pump"));
    assertThat(read().spellings())
        .isEqualTo(
            Map.of("hydrolic", "hydraulic", "hidraulic", "hydraulic", "forhatch", "fore hatch"));
    assertThat(read().problems()).isEmpty();
  }

  @Test
  void withoutFilesThereAreNoWords() {
    assertThat(read()).isEqualTo(new SearchWords(List.of(), Map.of(), List.of()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "alone                  | \"alone\" stands alone",
        "one, , two             | nothing between two commas",
        "one, two,              | nothing between two commas",
        "one, !!                | \"!!\" has no letter",
        "one, two, One          | \"one\" stands twice",
        "one, a b c d e f g     | longer than 6 words",
      })
  void aLineThatIsNoGroupIsReportedAndPassedOver(String line, String wrong) {
    workspace.synonyms("good, better", line, "bad, worse");
    assertThat(read().groups()).containsExactly(List.of("good", "better"), List.of("bad", "worse"));
    assertThat(read().problems()).hasSize(1);
    Problem problem = read().problems().get(0);
    assertThat(problem.file()).isEqualTo("index/words/synonyms.txt");
    assertThat(problem.line()).isEqualTo(2);
    assertThat(problem.wrong()).contains(wrong);
    assertThat(problem.right()).contains("separated by commas");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rudder                 | no colon",
        ": ruder                | no word before the colon",
        "rudder, helm: ruder    | more than one word",
        "rudder:                | an empty spelling",
        "rudder: ruder,,        | an empty spelling",
        "rudder: ruder: rodder  | a second colon",
        "rudder: Rudder         | a wrong spelling of itself",
        "rudder: kiel           | already a spelling of \"keel\"",
        "rudder: ??             | has no letter",
      })
  void aLineThatIsNoSpellingIsReportedAndPassedOver(String line, String wrong) {
    workspace.spellings("keel: kiel", "", line, "cleat: cleet");
    assertThat(read().spellings()).isEqualTo(Map.of("kiel", "keel", "cleet", "cleat"));
    assertThat(read().problems()).hasSize(1);
    Problem problem = read().problems().get(0);
    assertThat(problem.file()).isEqualTo("index/words/spellings.txt");
    assertThat(problem.line()).isEqualTo(3);
    assertThat(problem.wrong()).contains(wrong);
    assertThat(problem.right()).contains("a colon");
  }

  @Test
  void aLineThatIsNotUtf8IsReportedAndTheRestIsUsed() throws IOException {
    workspace.synonyms("x, y");
    Files.write(
        folder.resolve("index/words/synonyms.txt"),
        "one, two\ncaf\u00e9, bar\nthree, four".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(read().groups()).containsExactly(List.of("one", "two"), List.of("three", "four"));
    assertThat(read().problems()).extracting(Problem::line).containsExactly(2);
    assertThat(read().problems().get(0).wrong()).contains("not UTF-8");
  }

  @Test
  void aFileThatCannotBeReadIsReported() throws IOException {
    Files.createDirectories(folder.resolve("index/words/synonyms.txt"));
    assertThat(read().problems()).hasSize(1);
    assertThat(read().problems().get(0).toString())
        .startsWith("index/words/synonyms.txt: is a folder where a file belongs");
  }

  @Test
  void theIndexWorksWithTheLinesThatAreRight() throws IOException {
    SmallSearchWorkspace filled = SmallSearchWorkspace.filled(folder);
    filled.synonyms("alone", "gasket, door rubber");
    try (SearchIndex index = filled.index()) {
      assertThat(SearchWords.read(filled.folders()).problems())
          .extracting(Problem::line)
          .containsExactly(1);
      assertThat(SmallSearchWorkspace.ids(index, "door rubber")).contains("renew-hatch-gasket");
    }
  }

  @Test
  void aLineOfAsManyPhrasesAsMayBeIsReadAndOneMoreIsAProblem() {
    workspace.synonyms(phrases(Limits.LINE_PHRASES), phrases(Limits.LINE_PHRASES + 1));
    assertThat(read().groups()).hasSize(1);
    assertThat(read().problems()).hasSize(1);
    assertThat(read().problems().get(0).toString())
        .startsWith("index/words/synonyms.txt:2: there are 101 phrases on one line, more than 100");
  }

  private static String phrases(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> "word" + i)
        .collect(java.util.stream.Collectors.joining(", "));
  }

  @Test
  void aWordStandsOnAsManyLinesAsMayBeAndFindsPages() throws IOException {
    workspace = SmallSearchWorkspace.filled(folder);
    workspace.synonyms(
        IntStream.rangeClosed(0, 1_100).mapToObj(i -> "hatch, lid" + i).toArray(String[]::new));
    assertThat(read().groups()).hasSize(Limits.WORD_GROUPS);
    assertThat(read().problems().get(0).toString())
        .contains("synonyms.txt:21: \"hatch\" stands on more than 20 lines");
    try (SearchIndex index = workspace.index()) {
      assertThat(SmallSearchWorkspace.ids(index, "hatch")).contains("renew-hatch-gasket");
    }
  }

  @Test
  void aListIsUsedAsFarAsItMayGo() {
    workspace.synonyms(
        IntStream.rangeClosed(0, Limits.WORD_LINES)
            .mapToObj(i -> "a" + i + ", b" + i)
            .toArray(String[]::new));
    assertThat(read().groups()).hasSize(Limits.WORD_LINES);
    assertThat(read().problems().get(0).toString())
        .contains("synonyms.txt:5001: has 5001 lines, and is used only up to here")
        .contains("keep it under 5000 lines");
  }
}
