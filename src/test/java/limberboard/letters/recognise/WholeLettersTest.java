package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The list of whole letters that comes with the program. */
class WholeLettersTest {
  private static List<String> list() {
    return WordList.lines("whole-letters.txt");
  }

  @Test
  void eachSaysWhetherItIsUrgentAndBothAreMany() {
    Map<Boolean, Long> sides =
        list().stream()
            .collect(
                Collectors.partitioningBy(
                    line -> line.startsWith("urgent: "), Collectors.counting()));
    assertThat(list()).allMatch(line -> line.matches("(urgent|calm): \\S.*"));
    assertThat(sides.values()).allMatch(count -> count > 1000);
  }

  @Test
  void noneIsThereTwice() {
    assertThat(new HashSet<>(WholeLetters.lines())).hasSameSizeAs(list());
  }

  @Test
  void everyBracketIsAMark() {
    assertThat(WholeLetters.lines().stream().map(MarkedLine::of).map(Object::toString))
        .noneMatch(line -> line.substring(line.indexOf('[') + 1).contains("["));
  }

  @Test
  void whatIsUrgentAndWhatIsNotNameBoatsAlike() {
    Map<Boolean, Double> named =
        list().stream()
            .collect(
                Collectors.partitioningBy(
                    line -> line.startsWith("urgent: "),
                    Collectors.averagingInt(line -> line.contains("[own") ? 1 : 0)));
    assertThat(Math.abs(named.get(true) - named.get(false))).isLessThan(0.05);
  }
}
