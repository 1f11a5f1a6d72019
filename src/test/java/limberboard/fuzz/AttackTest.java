package limberboard.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Attacks made by hand, each through all the commands: nothing stops, and the rest works. All of
 * them with {@code -Dfuzz.rounds}, as {@link FuzzTest}; without it one in so many.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AttackTest {
  private static final Duration HANGS = Duration.ofSeconds(Integer.getInteger("fuzz.hangs", 120));
  private static final int USUAL_STEP = 12;
  private static final String HEAD = "---\ntitle: Page\n---\n";
  private static final String BOAT = "name: Dunlin\nmodel: tarnwick-26\nhull: 12\n";
  private static final String LOG = "date,work,engine-hours,note\n";

  @TempDir static Path folder;
  private FuzzWorkspace workspace;

  @BeforeAll
  void makeWorkspace() throws IOException {
    workspace = new FuzzWorkspace(folder, Path.of(""));
  }

  @ParameterizedTest
  @MethodSource("attacks")
  void stopsNothing(Attack attack) throws IOException {
    Fuzz fuzz = new Fuzz(workspace, new Watched(folder, HANGS));
    fuzz.attack(attack);
    assertThat(fuzz.commands()).isGreaterThan(10);
    assertThat(fuzz.findings()).isEmpty();
  }

  static Stream<Attack> attacks() {
    Map<String, Attack> all = new LinkedHashMap<>();
    bodies().forEach((name, body) -> put(all, name, "articles/topics/page.md", HEAD + body));
    headers().forEach((name, text) -> put(all, name, "articles/topics/page.md", text));
    boats().forEach((name, text) -> put(all, name, "demo-boats/dunlin/boat.yaml", text));
    logs().forEach((name, text) -> put(all, name, "demo-boats/dunlin/log.csv", LOG + text));
    cases().forEach((name, text) -> put(all, name, "demo-boats/cases/2026-01-01-x.yaml", text));
    intervals().forEach((name, text) -> put(all, name, "articles/procedures/page.md", text));
    words().forEach((name, text) -> put(all, name, "index/words/synonyms.txt", text));
    int step = Integer.getInteger("fuzz.rounds") == null ? USUAL_STEP : 1;
    List<Attack> attacks = List.copyOf(all.values());
    return IntStream.range(0, attacks.size()).filter(i -> i % step == 0).mapToObj(attacks::get);
  }

  private static void put(Map<String, Attack> all, String name, String file, String text) {
    all.put(name, new Attack(name, Map.of(file, text)));
  }

  private static Map<String, String> bodies() {
    Map<String, String> bodies = new LinkedHashMap<>();
    bodies.put(
        "a long definition named often",
        "[a]: " + "x".repeat(9_000) + "\n\n" + many("[a] ", 9_000));
    bodies.put("a tag and spaces", "<div src=" + " ".repeat(40_000) + "\n");
    bodies.put("spaces on short lines", "<div src=" + many(" ".repeat(900) + "\n", 50) + "\n");
    bodies.put("links into the open", lines("[a](<b", 150_000));
    bodies.put("characters as they are", lines("a <![CDATA[", 40_000));
    bodies.put("comments", lines("a <!--", 60_000));
    bodies.put("instructions", lines("a <?", 80_000));
    bodies.put("opening brackets", lines("<", 190_000));
    bodies.put("a link of 150 kB", "[a](" + "b".repeat(150_000) + ")");
    bodies.put("450 links of 2,000", many("[a](" + "b".repeat(1_990) + ")\n\n", 450));
    bodies.put("90 links of 2,000", many("[a](" + "b".repeat(1_990) + ")\n\n", 90));
    bodies.put("a tag of 1,500 attributes", "<a" + many(" b", 1_500) + "\n");
    bodies.put("a tag of 1,500 attributes on lines", "<a" + many("\nb", 1_500) + "\n");
    bodies.put("an address without end", "<a@" + many("a.", 2_000) + "a>\n");
    bodies.put("a table of 28 kB", many("|a", 5_000) + "\n" + many("|-", 5_000) + "\n");
    bodies.put("a table of 600 by 600", many(many("|a", 600) + "\n", 600));
    bodies.put("a table as large as may be", table(50, 100));
    bodies.put("a wide table as large as may be", table(100, 50));
    bodies.put("headings", many("# a\n", 240_000));
    bodies.put("headings as many as may be", many("# a\n", 4_900));
    bodies.put("words", many("a ", 240_000));
    bodies.put("words as many as may be", many(many("a ", 1_000) + "\n\n", 95));
    bodies.put("items", many("- a\n", 240_000));
    bodies.put("items as many as may be", many("- a\n", 4_900));
    bodies.put("items within items", many("- - - - - - - - - - a\n", 400));
    bodies.put("quotes within quotes", many(many("> ", 90) + "a\n\n", 50));
    bodies.put("hard ends", many("a\\\n", 4_900));
    bodies.put("letters one by one", many("*a* ", 100) + many("\n\n" + many("*a* ", 100), 90));
    bodies.put("code", many("    a\n", 4_900));
    bodies.put("pictures within pictures", many("![", 900) + "a" + many("](b)", 900));
    bodies.put("one word of 9,000 letters", "x".repeat(9_000));
    return bodies;
  }

  private static String table(int columns, int rows) {
    return many("|a", columns)
        + "\n"
        + many("|-", columns)
        + "\n"
        + many(many("|word", columns) + "\n", rows - 1);
  }

  private static Map<String, String> headers() {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put("a number as a key", "---\ntitle: Page\n99999999999: x\n---\n");
    headers.put("another number as a key", "---\ntitle: Page\n2147483648: x\n---\n");
    headers.put("an empty phrase", "---\ntitle: Page\nsaid-as:\n  -\n---\n");
    headers.put("a mapping as a phrase", "---\ntitle: Page\nsaid-as: [{a: b}]\n---\n");
    headers.put("a title of 100,000 words", "---\ntitle: " + many("a ", 100_000) + "\n---\n");
    headers.put("a title as long as may be", "---\ntitle: " + many("a ", 100) + "\n---\n");
    headers.put(
        "a name of 300,000", "---\ntitle: Page\nfits: {model: " + many("x", 300_000) + "}\n---\n");
    headers.put(
        "1,000 wrong names",
        "---\ntitle: Page\nzones: [" + many("xxxxxxxxxxxx, ", 999) + "x]\n---\n");
    headers.put(
        "depth", "---\ntitle: Page\nfits: " + many("{any: [", 14) + many("]}", 14) + "\n---\n");
    return headers;
  }

  private static Map<String, String> boats() {
    Map<String, String> boats = new LinkedHashMap<>();
    boats.put("a boat of the year 2147483647", BOAT + "built: 2147483647\n");
    boats.put("a boat of the year 0", BOAT + "built: 0\n");
    boats.put("a boat launched at the end", BOAT + "built: 2016\nlaunched: +999999999-12-31\n");
    boats.put(
        "a boat launched at the beginning", BOAT + "built: 2016\nlaunched: -999999999-01-01\n");
    boats.put("a season of a day", BOAT + "built: 2016\nseason: {from: --02-29, to: --02-29}\n");
    boats.put("equipment that is a list", BOAT + "built: 2016\nequipment: {berths: [a, b]}\n");
    boats.put("equipment that is nothing", BOAT + "built: 2016\nequipment: {berths: }\n");
    return boats;
  }

  private static Map<String, String> logs() {
    Map<String, String> logs = new LinkedHashMap<>();
    logs.put("a log at both ends", "+999999999-12-31,launched,,\n-999999999-01-01,launched,,\n");
    logs.put("a log of years in range", "1900-01-01,launched,,\n2200-12-31,launched,,\n");
    logs.put(
        "a log of a thousand launches",
        IntStream.range(0, 1_000)
            .mapToObj(i -> java.time.LocalDate.of(2020, 1, 1).plusDays(i) + ",launched,,\n")
            .collect(Collectors.joining()));
    logs.put(
        "a quote that is not closed",
        "2025-05-01,launched,,\"x\n" + many("2025-05-02,reading,1,\n", 99));
    return logs;
  }

  private static Map<String, String> cases() {
    String start =
        "symptom: water-in-forward-cabin\n"
            + "cause: something-else\n"
            + "date: 2025-05-01\n"
            + "model: tarnwick-26\n";
    Map<String, String> cases = new LinkedHashMap<>();
    cases.put("a case with an empty answer", start + "answers: {taste: }\n");
    cases.put("a case with a list as an answer", start + "answers: {taste: [salt]}\n");
    cases.put("a case with a mapping as an answer", start + "answers: {taste: {a: b}}\n");
    cases.put("a case without answers", start + "answers: 3\n");
    return cases;
  }

  private static Map<String, String> intervals() {
    Map<String, String> pages = new LinkedHashMap<>();
    for (String interval :
        new String[] {
          "every: P999999999Y",
          "every: P200Y",
          "seasons: 2147483647",
          "seasons: 200",
          "engine-hours: 1e308",
          "engine-hours: 2147483647",
          "every: P1Y, from-age: P999999999Y",
          "every: P1Y, from-age: P200Y",
          "every: P200Y, factors: [{when: {}, times: 1000000000}]",
          "every: P1D, factors: [{when: {}, times: 0.000000001}]",
          "uses: {hoists: 2147483647}"
        }) {
      pages.put(
          "an interval of " + interval,
          "---\ntitle: Page\nsystem: hull\nwork: service\nskill: owner\nminutes: 5\ninterval: {"
              + interval
              + "}\nlook-again: {after: P200Y}\n---\n1. Do it.\n");
    }
    return pages;
  }

  private static Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(
        "1,100 synonyms of one word",
        IntStream.range(0, 1_100)
            .mapToObj(i -> "water, w" + i + "\n")
            .collect(Collectors.joining()));
    words.put(
        "1,100 synonyms on one line",
        IntStream.range(0, 1_100)
            .mapToObj(i -> ", w" + i)
            .collect(Collectors.joining("", "water", "\n")));
    words.put(
        "a list of 90,000 lines",
        IntStream.range(0, 90_000)
            .mapToObj(i -> "a" + i + ",b" + i + "\n")
            .collect(Collectors.joining()));
    return words;
  }

  private static String many(String piece, int times) {
    return piece.repeat(times);
  }

  /** As many as that, on lines that are not too long. */
  private static String lines(String piece, int times) {
    int aLine = Math.max(1, 9_000 / piece.length());
    return (piece.repeat(aLine) + "\n").repeat(times / aLine + 1);
  }
}
