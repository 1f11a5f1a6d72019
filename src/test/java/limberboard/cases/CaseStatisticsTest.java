package limberboard.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.CaseEnd;
import limberboard.boat.CaseOutcome;
import limberboard.boat.RecordedCase;
import limberboard.cases.CaseStatistics.By;
import limberboard.cases.NextPages.Kind;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import org.junit.jupiter.api.Test;

/** What is counted of cases, and what they suggest to write. */
class CaseStatisticsTest {
  private static final String SYMPTOM = "water-forward";

  private static RecordedCase on(int year, int built, String cause, CaseEnd end) {
    return new RecordedCase(
        year + "-" + built + "-" + cause,
        SYMPTOM,
        Optional.of(cause),
        LocalDate.of(year, 6, 1),
        SampleCases.facts("sample-24", built, Water.SALT, Use.PRIVATE),
        Map.of(),
        List.of(),
        end,
        "");
  }

  private static CaseEnd took(String mend, double minutes, double cost) {
    return new CaseEnd(
        Optional.of(CaseOutcome.MENDED),
        "",
        Optional.of(mend),
        OptionalDouble.of(minutes + 10),
        OptionalDouble.of(minutes),
        OptionalDouble.of(cost));
  }

  private static CaseStatistics of(List<RecordedCase> cases) {
    return CaseStatistics.of(SampleCases.workspace().library(), cases);
  }

  @Test
  void casesAreCountedByModelSeasonSystemAndCause() {
    CaseEnd unknown = CaseEnd.UNKNOWN;
    CaseStatistics statistics =
        of(
            List.of(
                on(2024, 2015, "tank", took("mend-tank", 30, 10)),
                on(2025, 2015, "tank", took("mend-tank", 50, 40)),
                on(2025, 2015, "tank", unknown),
                on(2025, 2015, "condensation", took("air-the-cabin", 20, 0)),
                on(2025, 2015, "tank", CaseEnd.OPEN)));
    assertThat(statistics.cases()).isEqualTo(5);
    assertThat(statistics.seasons()).containsExactly(2024, 2025);
    assertThat(statistics.by(By.SEASON))
        .extracting(row -> row.id() + " " + row.cases())
        .containsExactly("2024 1", "2025 4");
    CaseStatistics.Row tank = statistics.by(By.CAUSE).get(0);
    assertThat(tank.id()).isEqualTo(SYMPTOM + " tank");
    assertThat(tank.cases()).as("an open case proves no cause").isEqualTo(3);
    assertThat(tank.minutes().median()).hasValue(50);
    assertThat(tank.minutes().known()).isEqualTo(2);
    assertThat(tank.cost().median()).hasValue(25);
    assertThat(tank.in(2024)).isEqualTo(1);
    assertThat(tank.in(2025)).isEqualTo(2);
    assertThat(statistics.by(By.MODEL).get(0).cases()).isEqualTo(5);
    assertThat(statistics.by(By.SYSTEM).stream().mapToInt(CaseStatistics.Row::cases).sum())
        .isEqualTo(5);
  }

  @Test
  void aCauseThatRisesOnBoatsOfAFewYearsIsNamed() {
    List<RecordedCase> cases = new ArrayList<>();
    for (int year = 2021; year <= 2026; year++) {
      for (int n = 0; n < 5; n++) {
        cases.add(on(year, 2015, year > 2024 ? "tank" : "condensation", CaseEnd.UNKNOWN));
        cases.add(on(year, 2005, n == 0 ? "tank" : "condensation", CaseEnd.UNKNOWN));
      }
    }
    List<RisingCause> rising = of(cases).rising();
    assertThat(rising).hasSize(1);
    assertThat(rising.get(0).cause()).isEqualTo("tank");
    assertThat(rising.get(0).from()).isBetween(2013, 2015);
    assertThat(rising.get(0).seasons()).isEqualTo(Map.of(2025, 5, 2026, 5));
    assertThat(rising.get(0).accident()).isLessThan(1e-3);
    assertThat(rising.get(0).tests()).isEqualTo(4);
    List<RecordedCase> steady =
        cases.stream().filter(each -> each.boat().built().getAsInt() == 2005).toList();
    assertThat(of(steady).rising()).isEmpty();
  }

  private static List<NextPages.Hint> hints(List<RecordedCase> cases) {
    return NextPages.of(SampleCases.workspace().library(), cases);
  }

  @Test
  void whatToWriteNextIsListedWithItsEvidence() {
    List<RecordedCase> cases = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      cases.add(on(2024, 2010 + i, "stem-fitting", took("rebed-stem-fitting", 200 + i, 0)));
    }
    CaseEnd found =
        new CaseEnd(
            Optional.of(CaseOutcome.MENDED),
            "a wet anchor warp",
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    for (int i = 0; i < 5; i++) {
      cases.add(on(2025, 2010 + i, "something-else", found));
    }
    for (int i = 0; i < 3; i++) {
      cases.add(
          on(2026, 2010 + i, "tank", CaseEnd.UNKNOWN).answered(Map.of(), List.of("tank-level")));
    }
    List<NextPages.Hint> hints = hints(cases);
    assertThat(hints)
        .extracting(NextPages.Hint::kind)
        .as("5 that count 1, 3 that count a half, 4 that count a quarter")
        .containsExactly(Kind.SOMETHING_ELSE, Kind.NOT_ANSWERED, Kind.MINUTES_OFF);
    assertThat(hints).extracting(NextPages.Hint::weight).containsExactly(5.0, 1.5, 1.0);
    assertThat(hints.get(0).evidence())
        .isEqualTo("5 of 12 cases had a cause that the page does not list: “a wet anchor warp”");
    assertThat(hints.get(0).page()).isEqualTo(SYMPTOM);
    assertThat(hints.get(0).examples()).hasSize(3).contains("2025-2010-something-else");
    assertThat(hints.get(2).page()).isEqualTo("rebed-stem-fitting");
    assertThat(hints.get(2).evidence())
        .isEqualTo("it says 90 minutes; 4 cases took about 201 on average");
    assertThat(hints.get(1).part()).isEqualTo("tank-level");
    assertThat(hints.get(1).evidence())
        .isEqualTo("3 of 3 owners who were asked could not tell (100 %)");
  }

  @Test
  void aPageToWhichNoCaseWasEverPutDownIsNamed() {
    List<RecordedCase> cases = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      cases.add(on(2025, 2010 + i, "something-else", CaseEnd.UNKNOWN));
    }
    assertThat(hints(cases))
        .extracting(NextPages.Hint::kind)
        .containsExactlyInAnyOrder(Kind.NEVER_HELPED, Kind.SOMETHING_ELSE);
    cases.add(on(2026, 2010, "tank", CaseEnd.UNKNOWN));
    assertThat(hints(cases)).extracting(NextPages.Hint::kind).doesNotContain(Kind.NEVER_HELPED);
  }

  @Test
  void aMendThatDoesNotCureIsNamedAndWhatIsRightIsNot() {
    List<RecordedCase> cases = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      CaseEnd end = took("mend-tank", 30, 0);
      cases.add(on(2024, 2010 + i, "tank", i == 0 ? end : end.with(CaseOutcome.NOT_MENDED)));
    }
    assertThat(hints(cases)).extracting(NextPages.Hint::kind).contains(Kind.NOT_CURED);
    assertThat(hints(cases.subList(0, 2))).isEmpty();
    assertThat(hints(List.of())).isEmpty();
  }
}
