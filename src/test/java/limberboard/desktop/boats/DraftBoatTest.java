package limberboard.desktop.boats;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.words.DayText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DraftBoatTest {
  @ParameterizedTest
  @CsvSource({
    "Stint,stint-2",
    "Red  Knot,red-knot",
    "Ängsö 3!,angso-3",
    "../../etc,etc",
    "???,boat",
    "Cases,boat",
  })
  void folderNamesAreSafeAndFree(String name, String id) {
    assertThat(DraftBoat.freeId(name, SmallWorkspace.read().boats())).isEqualTo(id);
  }

  @Test
  void aBoatThatIsOpenedAndNotChangedIsTheSameBoat() {
    for (Boat boat : SmallWorkspace.read().boats()) {
      Boat again = DraftBoat.of(Draft.of(boat), boat.model(), Optional.of(boat), List.of());
      assertThat(again).isEqualTo(boat);
    }
  }

  @ParameterizedTest
  @CsvSource({"20 May 2014", "20 MAY 2014", "20  may 2014", "2014-05-20", "20 May 2014"})
  void daysAreReadAsPeopleWriteThem(String text) {
    assertThat(DayText.withYear(text)).contains(LocalDate.of(2014, 5, 20));
    assertThat(DayText.withYear(DayText.written(LocalDate.of(2014, 5, 20))))
        .contains(LocalDate.of(2014, 5, 20));
  }

  @ParameterizedTest
  @CsvSource({"15 April", "15 apr", "--04-15", "04-15"})
  void daysOfTheYearAreReadAsPeopleWriteThem(String text) {
    assertThat(DayText.monthDay(text)).contains(MonthDay.of(4, 15));
  }

  @ParameterizedTest
  @CsvSource({"31 February 2015", "tomorrow", "5/20/2014", "''"})
  void whatIsNoDayIsNotGuessed(String text) {
    assertThat(DayText.withYear(text)).isEmpty();
  }
}
