package limberboard.writing.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import limberboard.library.LibraryReader;
import limberboard.library.TestWorkspace;
import limberboard.library.page.Kind;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BegunPageTest {
  private static final String OUTLINE =
      """
      # Wet berth
      ## Causes
      * The seal is worn (6, mend)
        It wipes the tube no more.
      * The seal at the hatch has set (mend-hatch)
        weight: 2
      3. Rain: it runs down the mast

      **Checks:**
      1. Does it taste of salt? (1 minute)
           how: Dip a finger.
           - Salt: worn seal usually, rain never
           - Fresh water: hatch very often; others 5 %
      2. When does it come? sailing, rain, at any time (0.5 h)
           sailing: worn
           nobody knows: ghost often, seal
      """;

  @TempDir Path folder;

  private List<Problem> problems(BegunPage page) throws IOException {
    LibraryReader reader = new LibraryReader(new TestWorkspace(folder).folders());
    reader.read();
    return reader.typing(page.path(), page.kind()).read(page.text().plain()).problems();
  }

  @Test
  void everyKindBeginsWithNothingWrongButWhatIsMissing() throws IOException {
    Map<Kind, List<String>> missing =
        Map.of(
            Kind.SYMPTOM, List.of("zones", "causes"),
            Kind.PROCEDURE, List.of("work", "skill", "minutes"),
            Kind.MATERIAL, List.of("group"),
            Kind.MODEL, List.of("built", "drawing"),
            Kind.CAUTION, List.of("danger"),
            Kind.TOPIC, List.of(),
            Kind.WORDING, List.of("for"));
    for (Kind kind : Kind.values()) {
      List<Problem> problems = problems(BegunPage.of(kind, "A \"new\": page", "new-page"));
      assertThat(problems.stream().map(Problem::key))
          .as(kind.word())
          .containsAll(missing.getOrDefault(kind, List.of()));
      assertThat(problems)
          .as(kind.word())
          .allMatch(p -> p.wrong().contains("missing") || p.wrong().contains("empty"));
    }
    assertThat(BegunPage.of(Kind.PROCEDURE, "New", "new").text().text())
        .contains("skill: # owner, handy, yard, licensed\n");
  }

  @Test
  void idsAreMadeFromTitles() {
    assertThat(IdWords.of("Water in the owner's cabin!")).isEqualTo("water-in-the-owners-cabin");
    assertThat(IdWords.of("Über Øl – ça va")).isEqualTo("uber-ol-ca-va");
    assertThat(IdWords.of("…")).isEmpty();
    assertThat(IdWords.of("word ".repeat(40))).hasSizeLessThan(61).endsWith("word");
  }

  @Test
  void plainLinesBecomeCausesAndChecks() throws IOException {
    SymptomOutline outline = OutlineReader.read("lines", OUTLINE);
    assertThat(outline.causes())
        .extracting(OutlinedCause::id)
        .containsExactly("seal-worn", "seal-at-hatch-set", "rain-it-runs-down");
    assertThat(outline.causes().get(0).weight()).contains("6");
    assertThat(outline.causes().get(0).about()).isEqualTo("It wipes the tube no more.");
    assertThat(outline.causes().get(1).mend()).contains("mend-hatch");
    assertThat(outline.causes().get(1).weight()).contains("2");
    assertThat(outline.isUnweighed()).isTrue();
    OutlinedCheck taste = outline.checks().get(0);
    assertThat(taste.ask()).isEqualTo("Does it taste of salt?");
    assertThat(taste.minutes()).contains("1");
    assertThat(taste.how()).isEqualTo("Dip a finger.");
    assertThat(taste.answers()).containsExactly("salt", "fresh-water");
    assertThat(taste.finds())
        .isEqualTo(
            Map.of(
                "salt", Map.of("seal-worn", "usually", "rain-it-runs-down", "never"),
                "fresh-water", Map.of("seal-at-hatch-set", "very-often", "others", "0.05")));
    OutlinedCheck when = outline.checks().get(1);
    assertThat(when.answers()).startsWith("sailing", "rain", "at-any-time");
    assertThat(when.minutes()).contains("30");
    assertThat(when.finds().get("sailing")).isEqualTo(Map.of("seal-worn", "usually"));
    assertThat(outline.problems())
        .extracting(Problem::toString)
        .anyMatch(line -> line.contains("\"ghost\" is no cause"))
        .anyMatch(line -> line.contains("\"seal\" may be"))
        .anyMatch(line -> line.contains("stands before Causes"));
  }

  @Test
  void anOutlineBecomesAPageThatNeedsOnlyWhatNobodySaid() throws IOException {
    BegunPage page = BegunPage.of(OutlineReader.read("lines", OUTLINE), "Wet berth", "wet-berth");
    assertThat(problems(page).stream().map(Problem::key))
        .contains("causes[3].mend", "checks[2].how");
    String whole =
        """
        Causes
        The seal is worn (6, mend-it)
        Rain comes in (3, mend-it)
        Checks
        Does it taste of salt? (1 minute)
            how: Dip a finger.
            salt: seal usually, rain never
            fresh: others often
        """
            .replace("mend-it", "mend-all");
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/procedures/mend-all.md",
        "---\ntitle: M\nsystem: hull\nwork: mend\nskill: owner\nminutes: 5\n---\n");
    BegunPage good = BegunPage.of(OutlineReader.read("lines", whole), "Wet berth", "wet-berth");
    String text = good.text().text().replace("zones: []", "zones: [cabin]");
    LibraryReader reader = new LibraryReader(workspace.folders());
    reader.read();
    var read = reader.typing(good.path(), Kind.SYMPTOM).read(text);
    assertThat(read.problems()).isEmpty();
    Symptom symptom = (Symptom) read.page().orElseThrow().details();
    assertThat(symptom.causes()).hasSize(2);
    assertThat(symptom.checks().get(0).answers()).containsExactly("salt", "fresh");
  }

  @Test
  void anEmptyOutlineSaysWhatItLacks() {
    assertThat(OutlineReader.read("lines", "").problems()).hasSize(2);
  }
}
