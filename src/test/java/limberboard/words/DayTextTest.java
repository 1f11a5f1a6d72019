package limberboard.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.stream.Stream;
import limberboard.library.SpecExamples;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs {@code days.spec.md}: every line is a test. */
class DayTextTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);
  private final DayText days = new DayText(TODAY);

  @TestFactory
  Stream<DynamicTest> examples() {
    return SpecExamples.read("/limberboard/words/days.spec.md").examples().stream()
        .flatMap(example -> example.blocks().stream())
        .filter(block -> !block.word().equals("expect"))
        .flatMap(
            block ->
                block
                    .text()
                    .lines()
                    .map(line -> DynamicTest.dynamicTest(line, () -> check(block.word(), line))));
  }

  private void check(String kind, String line) {
    int equals = line.indexOf('=');
    String typed = line.substring(0, Math.max(0, equals - 1));
    String expected = line.substring(equals + 1).strip();
    assertThat(kind.equals("typed") ? said(typed) : saidOfTheYear(typed)).isEqualTo(expected);
  }

  private String said(String typed) {
    DayText.Read read = days.read(typed);
    return read instanceof DayText.Found found
        ? found.on() + (found.couldBeOther() ? " told" : "")
        : read.why();
  }

  private static String saidOfTheYear(String typed) {
    return DayText.monthDay(typed).map(MonthDay::toString).orElse("Nothing");
  }

  @Test
  void whatIsWrittenInWordsIsReadAsTheSameDay() {
    for (LocalDate day = TODAY; day.isBefore(TODAY.plusDays(800)); day = day.plusDays(1)) {
      assertThat(days.read(DayText.written(day))).isEqualTo(new DayText.Found(day, false));
      assertThat(days.read(day.toString())).isEqualTo(new DayText.Found(day, false));
    }
  }
}
