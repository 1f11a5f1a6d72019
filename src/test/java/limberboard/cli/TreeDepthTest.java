package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.cli.TerminalRun.Ran;
import limberboard.print.PdfLetters;
import limberboard.print.PdfText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A tree cut down to some levels, from the terminal, on the demo's own pages. */
class TreeDepthTest {
  private static final int WHOLE = 10;
  private final TerminalRun terminal = TerminalRun.ofDemo(LocalDate.of(2026, 4, 1));
  @TempDir Path folder;

  private Ran tree(String... more) {
    List<String> words =
        new ArrayList<>(List.of("tree", "water-in-forward-cabin", "--boat", "dunlin"));
    words.addAll(List.of(more));
    return terminal.run(words.toArray(String[]::new));
  }

  private JsonNode json(int levels) throws IOException {
    return tree("--depth", Integer.toString(levels), "--json").ended(ExitCode.OK).json();
  }

  @Test
  void eachLevelMoreGoesOnWhereTheOneBeforeSaidItWould() throws IOException {
    Set<Integer> before = Set.of();
    Set<Integer> announced = Set.of(1);
    double share = 0;
    for (int levels = 1; levels <= 4; levels++) {
      JsonNode tree = json(levels);
      Set<Integer> here = numbers(tree.get("forks"));
      Set<Integer> expected = new HashSet<>(before);
      expected.addAll(announced);
      assertThat(here).isEqualTo(expected);
      assertThat(tree.get("share").asDouble()).isGreaterThanOrEqualTo(share);
      assertThat(tree.get("levels").asInt()).isEqualTo(WHOLE);
      before = here;
      announced = numbers(tree.get("goesOn"));
      share = tree.get("share").asDouble();
    }
    assertThat(share).isPositive();
  }

  private static Set<Integer> numbers(JsonNode forks) {
    Set<Integer> numbers = new HashSet<>();
    forks.forEach(fork -> numbers.add(fork.get("number").asInt()));
    return numbers;
  }

  @Test
  void theKeysOfItsJsonAreDocumented() throws IOException {
    JsonNode tree = json(1);
    List<String> names = new ArrayList<>();
    tree.fieldNames().forEachRemaining(names::add);
    assertThat(names)
        .containsExactly("symptom", "boat", "levels", "share", "cautions", "forks", "goesOn");
    List<String> next = new ArrayList<>();
    tree.get("goesOn").get(0).fieldNames().forEachRemaining(next::add);
    assertThat(next).containsExactly("number", "kind", "id", "text", "chance", "leading");
    String documented = Files.readString(Path.of("docs/terminal.md"));
    assertThat(documented).contains("`levels`", "`share`", "`goesOn`", "--depth LEVELS");
    assertThat(next).allSatisfy(name -> assertThat(documented).contains("\"" + name));
  }

  @Test
  void textDrawingAndPaperSayAtEachEndWhatComesNextAndWhatItMayBe() throws IOException {
    Path svg = folder.resolve("tree.svg");
    Path pdf = folder.resolve("tree.pdf");
    tree("--depth", "2", "--svg", svg.toString(), "--pdf", pdf.toString()).ended(ExitCode.OK);
    String text = PdfText.flat(tree("--depth", "2").ended(ExitCode.OK).out());
    String drawn =
        PdfText.flat(Files.readString(svg).replaceAll("<[^>]*>", " ").replace("&apos;", "'"));
    String paper = withoutChances(Files.readAllBytes(pdf));
    JsonNode goesOn = json(2).get("goesOn");
    assertThat(goesOn).hasSizeGreaterThan(10);
    for (JsonNode next : goesOn) {
      String at = "oes on at " + next.get("number").asInt() + ", ";
      String end =
          next.get("kind").asText().equals("check")
              ? at + "“" + next.get("text").asText() + "”; likeliest: "
              : at;
      assertThat(text).contains(end);
      assertThat(drawn).contains(end);
      assertThat(paper).contains(PdfLetters.dense(end));
    }
    String rest = "limberboard tree water-in-forward-cabin --boat dunlin --pdf tree.pdf";
    assertThat(text).contains("This is a part of the tree: 6 of its ", rest);
    assertThat(drawn).contains(rest);
    assertThat(paper).contains(PdfLetters.dense(rest));
  }

  /** On paper an answer's chance may be read between two lines of the words beside it. */
  private static String withoutChances(byte[] pdf) {
    return PdfLetters.of(pdf).all().stream()
        .map(PdfLetters.Letter::text)
        .collect(Collectors.joining())
        .replaceAll("[0-9]+%", "");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "two", "2.5", "", "1e3", "00"})
  void whatIsNoNumberOfLevelsIsRefusedInWords(String levels) {
    Ran ran = tree("--depth", levels).ended(ExitCode.USAGE);
    assertThat(ran.err())
        .contains("--depth is a whole number of levels from 1, such as 2, not “" + levels + "”");
    assertThat(ran.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"12", "99999999999999999999"})
  void moreLevelsThanTheTreeHasIsTheWholeTreeAndThatIsSaid(String levels) {
    Ran deep = tree("--depth", levels).ended(ExitCode.OK);
    assertThat(deep.err())
        .contains("The tree has only " + WHOLE + " levels; this is the whole of it.");
    assertThat(deep.out()).isEqualTo(tree().out()).doesNotContain("goes on at");
    Ran just = tree("--depth", Integer.toString(WHOLE)).ended(ExitCode.OK);
    assertThat(just.err()).isEmpty();
    assertThat(just.out()).isEqualTo(deep.out());
  }

  @Test
  void aCardChoosesItsStepsItself() {
    Ran ran = tree("--card", "--depth", "2").ended(ExitCode.USAGE);
    assertThat(ran.err())
        .contains(
            "--card chooses itself which steps go on its sheet; leave --depth or --card away");
  }

  @Test
  void whatIsCutSaysHowToHaveTheRestFromTheSameAnswers() {
    String text =
        PdfText.flat(tree("--depth", "1", "--answer", "when=after-rain").ended(ExitCode.OK).out());
    assertThat(text)
        .contains(
            "limberboard tree water-in-forward-cabin --boat dunlin --answer \"when=after-rain\""
                + " --pdf tree.pdf");
  }
}
