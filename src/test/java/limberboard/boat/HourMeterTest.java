package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** What is believed of a boat's hour meter. */
class HourMeterTest {
  private static final LocalDate FIRST = LocalDate.of(2024, 4, 1);

  private static LogEntry entry(int day, String work, Double hours) {
    return new LogEntry(
        FIRST.plusDays(day),
        work,
        hours == null ? OptionalDouble.empty() : OptionalDouble.of(hours),
        Map.of(),
        "",
        Optional.empty(),
        day + 2);
  }

  @Test
  void aSlipOfThePenIsLeftOutAndTheRestIsKept() {
    HourMeter meter =
        HourMeter.of(
            List.of(
                entry(0, "reading", 400.0),
                entry(10, "reading", 4100.0),
                entry(20, "reading", 415.0),
                entry(30, "reading", 420.0)));
    assertThat(meter.readings())
        .extracting(HourMeter.Reading::hours)
        .containsExactly(400.0, 415.0, 420.0);
    assertThat(meter.doubted()).extracting(LogEntry::line).containsExactly(12);
  }

  @Test
  void aNewMeterCountsOnFromTheOldOne() {
    HourMeter meter =
        HourMeter.of(
            List.of(
                entry(0, "reading", 900.0),
                entry(5, "new-meter", null),
                entry(9, "reading", 25.0),
                entry(12, "new-meter", 3.0),
                entry(15, "reading", 10.0)));
    assertThat(meter.readings())
        .extracting(HourMeter.Reading::hours)
        .containsExactly(900.0, 900.0, 925.0, 925.0, 932.0);
    assertThat(meter.doubted()).isEmpty();
  }

  @Property(seed = "20261125")
  void readingsNeverFallAndNoLongerRunWasLeftOut(
      @ForAll @Size(max = 10) List<@IntRange(max = 12) Integer> hours) {
    List<LogEntry> log = new ArrayList<>();
    for (int i = 0; i < hours.size(); i++) {
      log.add(entry(i, "reading", hours.get(i).doubleValue()));
    }
    HourMeter meter = HourMeter.of(log);
    assertThat(meter.readings()).extracting(HourMeter.Reading::hours).isSorted();
    assertThat(meter.readings().size() + meter.doubted().size()).isEqualTo(hours.size());
    assertThat(meter.readings()).hasSize(longest(hours));
  }

  /** The longest run that never falls, by trying every choice. */
  private static int longest(List<Integer> hours) {
    int best = 0;
    for (int chosen = 0; chosen < 1 << hours.size(); chosen++) {
      int last = -1;
      int count = 0;
      for (int i = 0; i < hours.size() && count >= 0; i++) {
        if ((chosen >> i & 1) == 1) {
          count = hours.get(i) < last ? Integer.MIN_VALUE : count + 1;
          last = hours.get(i);
        }
      }
      best = Math.max(best, count);
    }
    return best;
  }
}
