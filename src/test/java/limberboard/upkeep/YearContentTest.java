package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.NotEntered;
import limberboard.library.page.Procedure;
import limberboard.library.value.Need;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * That a year's work is what an owner can do. The hours are those that a careful owner of such a
 * boat is said to spend: common practice, no source.
 */
@ContentTest
class YearContentTest {
  private static final LocalDate A_SPRING_DAY = LocalDate.of(2026, 3, 15);
  private static final double IN_HOUR = 60;

  @ParameterizedTest
  @CsvSource({
    "a tarnwick-30 of 2017, 55, 70, 50",
    "a tarnwick-30 of 2017 for club-racing, 70, 80, 50",
    "a tarnwick-30 of 2017 for charter, 105, 115, 70",
    "a tarnwick-34 of 2017, 70, 80, 50",
    "a tarnwick-26 of 2017, 45, 50, 48",
    "a tarnwick-21 of 2017, 22, 28, 35",
  })
  void aYearIsWhatAnOwnerCanDo(String id, long least, long most, int lines) {
    Boat boat = NotEntered.of(id, Demo.workspace().library()).orElseThrow();
    YearOfWork year = YearOfWork.of(Demo.upkeep(boat, A_SPRING_DAY), 12);
    double minutes = year.minutes(Need.MUST) + year.minutes(Need.SHOULD);
    assertThat(Math.round(minutes / IN_HOUR)).as("whole hours").isBetween(least, most);
    assertThat(year.count(Need.MUST) + year.count(Need.SHOULD)).isLessThanOrEqualTo(lines);
  }

  @Test
  void everyIntervalSaysWhatFollowsAndHowMuchItIsNeeded() {
    assertThat(Demo.workspace().library().all(Procedure.class))
        .flatExtracting(page -> page.details().interval().stream().toList())
        .isNotEmpty()
        .allSatisfy(
            interval -> {
              assertThat(interval.leftUndone()).isPresent();
              assertThat(interval.need()).isPresent();
            });
  }
}
