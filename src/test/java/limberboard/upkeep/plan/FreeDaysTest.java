package limberboard.upkeep.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Free days as people name them, and those that are proposed. */
class FreeDaysTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 28);
  private static final LocalDate UNTIL = LocalDate.of(2027, 4, 15);
  private static final FreeDaysReader READER = new FreeDaysReader(ON, UNTIL);

  private static FreeDay day(int month, int day, int minutes) {
    return new FreeDay(LocalDate.of(2027, month, day), minutes);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"16|960", "5.5|330", "'5,5'|330", "5:30|330", "2 h|120", "1 hour|60", "0.01|1"})
  void readsHours(String text, int minutes) {
    assertThat(HoursText.minutes(text)).contains(minutes);
  }

  @ParameterizedTest
  @CsvSource({"0", "-3", "0:00", "six", "''", "5:75", "1e3", "999999"})
  void refusesWhatAreNoHours(String text) {
    assertThat(HoursText.minutes(text)).isEqualTo(Optional.empty());
  }

  @Test
  void daysWithoutHoursShareTheRest() {
    FreeDays days =
        READER.read(List.of("2027-03-28", "2027-03-20=6", "21.3.2027"), OptionalInt.of(900));
    assertThat(days.days()).containsExactly(day(3, 20, 360), day(3, 21, 270), day(3, 28, 270));
    assertThat(days.remarks()).isEmpty();
    assertThat(days.proposed()).isFalse();
  }

  /** What an owner types for two free weekends, and the days that are meant by it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12-13 Dec | 2026-12-12 2026-12-13",
        "12-13 Dec, 19-20 Dec | 2026-12-12 2026-12-13 2026-12-19 2026-12-20",
        "12-13, 19-20 Dec | 2026-12-12 2026-12-13 2026-12-19 2026-12-20",
        "12 and 13 December | 2026-12-12 2026-12-13",
        "12, 13 and 19 Dec 2026 | 2026-12-12 2026-12-13 2026-12-19",
        "12\u201313 Dec | 2026-12-12 2026-12-13",
        "12 - 13 Dec 2026 | 2026-12-12 2026-12-13",
        "12 to 13 Dec | 2026-12-12 2026-12-13",
        "12 Dec to 13 Dec | 2026-12-12 2026-12-13",
        "12 Dec-13 Dec | 2026-12-12 2026-12-13",
        "12 Dec - 13 | 2026-12-12 2026-12-13",
        "Dec 12-13 | 2026-12-12 2026-12-13",
        "December 12-13, 2026 | 2026-12-12 2026-12-13",
        "12.-13.12. | 2026-12-12 2026-12-13",
        "12.-13.12.2026 | 2026-12-12 2026-12-13",
        "2026-12-12, 2026-12-13 | 2026-12-12 2026-12-13",
        "2026-12-12/2026-12-13 | 2026-12-12 2026-12-13",
        "2026-12-12 to 2026-12-13 | 2026-12-12 2026-12-13",
        "Sat 12 Dec; Sun 13 Dec | 2026-12-12 2026-12-13",
        "weekend of 12 Dec | 2026-12-12 2026-12-13",
        "weekend of 13 Dec | 2026-12-12 2026-12-13",
        "Dec 12, 2026 | 2026-12-12",
        "12/12 | 2026-12-12",
        "30 Dec - 2 Jan | 2026-12-30 2026-12-31 2027-01-01 2027-01-02",
        "30 Dec 2026 - 2 Jan | 2026-12-30 2026-12-31 2027-01-01 2027-01-02",
        "20 March | 2027-03-20",
        "tomorrow | 2026-11-29"
      })
  void readsDaysAsAnOwnerWritesThem(String text, String days) {
    FreeDays read = READER.read(List.of(text), OptionalInt.of(600));
    assertThat(read.remarks()).isEmpty();
    assertThat(read.days().stream().map(day -> day.day().toString()))
        .containsExactly(days.split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12-13 Dec=6 | 360 360",
        "12 Dec=6, 13 Dec=4:30 | 360 270",
        "12-13 Dec 6 h each | 360 360",
        "12 Dec 6h, 13 Dec | 360 240",
        "12-13 Dec | 300 300"
      })
  void readsTheHoursOfEachDay(String text, String minutes) {
    FreeDays read = READER.read(List.of(text), OptionalInt.of(600));
    assertThat(read.days().stream().map(day -> "" + day.minutes()))
        .containsExactly(minutes.split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "two weekends | Say which weekend. Write days as 28-29 Nov, or each with its hours, as 28"
            + " Nov=6.",
        "12-13 | “12-13” has no month. Write days as 28-29 Nov",
        "soon | “soon” is no day. Write days as 28-29 Nov",
        "13-12 Dec | 12\u00a0Dec\u00a02026 is before 13\u00a0Dec\u00a02026",
        "1 Dec to 15 Apr | These are 136 days in a row; name at most 31",
        "31-32 Dec | is no day",
        "Sun 12 Dec | is a Saturday, no Sunday",
        "20 Nov 2026 - 30 Nov 2026 | 8 of “20 Nov 2026 - 30 Nov 2026”: 20\u00a0Nov\u00a02026 is"
            + " past"
      })
  void saysWhatWouldBeRight(String text, String why) {
    FreeDays read = READER.read(List.of(text), OptionalInt.of(600));
    assertThat(String.join(" ", read.remarks())).contains("Left out").contains(why);
  }

  @Test
  void saysWhatIsLeftOutAndTakesTheRest() {
    FreeDays days =
        READER.read(
            List.of("2027-02-30", "2027-05-01", "2026-11-01", "2027-03-20=25", "2027-03-21=5"),
            OptionalInt.empty());
    assertThat(days.days()).containsExactly(day(3, 21, 300));
    assertThat(days.remarks()).hasSize(4);
    assertThat(days.remarks().get(0)).contains("2027-02-30", "February 2027 has no day 30");
    assertThat(days.remarks().get(1)).contains("is after 15\u00a0Apr\u00a02027");
    assertThat(days.remarks().get(2)).contains("is past");
    assertThat(days.remarks().get(3)).contains("“25” are no hours of a day");
  }

  @Test
  void takesADayNamedTwiceOnce() {
    FreeDays days = READER.read(List.of("2027-03-21=5", "21 March 2027=3"), OptionalInt.empty());
    assertThat(days.days()).containsExactly(day(3, 21, 300));
    assertThat(days.remarks()).singleElement().asString().contains("named twice");
  }

  @Test
  void daysThatComeToOtherHoursCountAndItSaysSo() {
    FreeDays days =
        READER.read(List.of("2027-03-21=5", "2027-03-27=5", "2027-03-28"), OptionalInt.of(600));
    assertThat(days.minutes()).isEqualTo(600);
    assertThat(days.remarks()).singleElement().asString().contains("No time is left for 28");
    FreeDays more = READER.read(List.of("2027-03-21=5"), OptionalInt.of(600));
    assertThat(more.remarks()).singleElement().asString().contains("come to 5 h, not 10 h");
  }

  @Test
  void proposesWholeWeekendsBeforeTheDate() {
    FreeDays days = FreeDays.proposed(960, ON, UNTIL, 0, 300);
    assertThat(days.days())
        .containsExactly(day(4, 3, 240), day(4, 4, 240), day(4, 10, 240), day(4, 11, 240));
    assertThat(days.remarks())
        .containsExactly(
            "No free days were named, so 4 days of weekends are proposed, 4 h each; name your"
                + " own.");
    assertThat(days.proposed()).isTrue();
    LocalDate june = LocalDate.of(2027, 6, 7);
    assertThat(FreeDays.proposed(120, june, june.plusDays(30), Integer.MAX_VALUE, 300).days())
        .containsExactly(day(6, 12, 120));
  }

  @Test
  void proposesSomeDaysSoonAndTheOthersLate() {
    LocalDate november = LocalDate.of(2026, 11, 30);
    FreeDays days = FreeDays.proposed(960, november, UNTIL, 2, 300);
    assertThat(days.days())
        .containsExactly(
            new FreeDay(LocalDate.of(2026, 12, 5), 240),
            new FreeDay(LocalDate.of(2026, 12, 6), 240),
            day(4, 10, 240),
            day(4, 11, 240));
  }

  @Test
  void proposesNoMoreThanAPersonStands() {
    FreeDays days =
        FreeDays.proposed(6000, LocalDate.of(2027, 4, 10), LocalDate.of(2027, 4, 12), 0, 300);
    assertThat(days.days()).containsExactly(day(4, 10, 720), day(4, 11, 720));
    assertThat(days.remarks().get(1)).contains("only 2 such days", "24 h of the 100 h");
    FreeDays week =
        FreeDays.proposed(600, LocalDate.of(2027, 4, 12), LocalDate.of(2027, 4, 14), 0, 300);
    assertThat(week.days()).containsExactly(day(4, 13, 300), day(4, 14, 300));
  }
}
