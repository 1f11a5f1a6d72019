package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.LogEntry;
import limberboard.library.value.LogEvents;
import org.junit.jupiter.api.Test;

class WorkIdTest {
  @Test
  void aLookAgainIsNotTheWorkItFollows() {
    WorkId work = WorkId.of(entry("bed", Optional.empty()));
    WorkId look = WorkId.of(entry(LogEvents.LOOKED_AGAIN, Optional.of("bed")));
    assertThat(work).isEqualTo(new WorkId("bed", false)).isNotEqualTo(look);
    assertThat(look).isEqualTo(new WorkId("bed", true));
    assertThat(look.text()).isEqualTo("bed/again");
    assertThat(work.text()).isEqualTo("bed");
  }

  private static LogEntry entry(String work, Optional<String> of) {
    return new LogEntry(
        LocalDate.of(2026, 5, 1), work, OptionalDouble.empty(), Map.of(), "", of, 0);
  }
}
