package limberboard.print.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Period;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import limberboard.library.Library;
import limberboard.library.value.Condition;
import limberboard.library.value.Interval;
import limberboard.library.value.Phase;
import limberboard.library.value.Use;
import limberboard.workings.QuantityWords;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Intervals in words; the periods are ISO 8601 durations. */
class IntervalWordsTest {
  private final IntervalWords words =
      new IntervalWords(new CutContext(Library.empty(), Optional.empty(), QuantityWords.METRIC));

  @ParameterizedTest(name = "{8}")
  @CsvFileSource(resources = "intervals.csv", numLinesToSkip = 1)
  void intervalsAreSaidInWords(
      Period every,
      Integer seasons,
      Double hours,
      Integer hoists,
      Period fromAge,
      String phase,
      Boolean expires,
      Double factor,
      String expected) {
    Condition charter =
        new Condition(null, null, null, null, null, null, List.of(Use.CHARTER), null, null, null);
    Interval interval =
        new Interval(
            Optional.ofNullable(every),
            seasons == null ? OptionalInt.empty() : OptionalInt.of(seasons),
            hours == null ? OptionalDouble.empty() : OptionalDouble.of(hours),
            hoists == null ? Map.of() : Map.of("hoists", hoists),
            Optional.ofNullable(fromAge),
            Optional.empty(),
            Optional.ofNullable(phase)
                .map(word -> Phase.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'))),
            expires != null,
            false,
            false,
            Optional.empty(),
            Optional.empty(),
            factor == null ? List.of() : List.of(new Interval.Factor(charter, factor)));
    assertThat(words.of(interval)).isEqualTo(expected);
  }
}
