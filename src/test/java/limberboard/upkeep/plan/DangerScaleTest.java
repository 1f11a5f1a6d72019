package limberboard.upkeep.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import limberboard.library.value.Consequence;
import limberboard.library.value.Need;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The scale as its documentation states it. */
class DangerScaleTest {
  private static final Consequence[] GRAVEST_FIRST = Consequence.values();

  @ParameterizedTest
  @CsvSource({
    "SINKS, MUST, 0, 30000", "SINKS, SHOULD, 0, 10000", "HURTS, MUST, 10, 18000",
    "STOPS, SHOULD, 5, 450", "COSTS, MUST, 0, 300", "LOOKS, MUST, 0, 30",
    "LOOKS, SHOULD, 10, 0", "SINKS, OPTIONAL, 10, 0"
  })
  void isWhatIsStated(Consequence consequence, Need need, int overdue, long danger) {
    assertThat(DangerScale.danger(consequence, need, overdue)).isEqualTo(danger);
  }

  @Test
  void growsWithTheConsequenceWithNeedAndWithTime() {
    for (Need need : new Need[] {Need.MUST, Need.SHOULD}) {
      for (int overdue = 0; overdue <= 10; overdue++) {
        for (int i = 1; i < GRAVEST_FIRST.length; i++) {
          assertThat(DangerScale.danger(GRAVEST_FIRST[i - 1], need, overdue))
              .isGreaterThan(DangerScale.danger(GRAVEST_FIRST[i], need, overdue));
        }
        for (Consequence consequence : GRAVEST_FIRST) {
          assertThat(DangerScale.danger(consequence, Need.MUST, overdue))
              .isGreaterThan(DangerScale.danger(consequence, Need.SHOULD, overdue));
          if (overdue > 0) {
            assertThat(DangerScale.danger(consequence, need, overdue))
                .isGreaterThanOrEqualTo(DangerScale.danger(consequence, need, overdue - 1));
          }
        }
      }
    }
  }

  @Test
  void dangerIsEitherOrComfort() {
    for (Need need : Need.values()) {
      for (Consequence consequence : GRAVEST_FIRST) {
        boolean danger = DangerScale.danger(consequence, need, 0) > 0;
        assertThat(DangerScale.comfort(consequence, need) > 0).isNotEqualTo(danger);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2026-01-01, 2026-12-31, 2026-06-01, 0",
    "2026-01-01, 2026-12-31, 2026-12-31, 0",
    "2026-01-01, 2026-12-27, 2027-02-01, 1",
    "2025-01-01, 2026-01-01, 2026-07-10, 5",
    "2016-01-01, 2017-01-01, 2027-01-01, 10",
    "2026-01-01, 2026-01-01, 2026-01-02, 10"
  })
  void overdueIsCountedInTenthsOfTheInterval(
      LocalDate since, LocalDate runsOut, LocalDate day, int tenths) {
    assertThat(DangerScale.overdue(since, runsOut, day)).isEqualTo(tenths);
  }
}
