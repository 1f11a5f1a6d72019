package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Pages no one should write. The limits only tell slow from endless; speed is benchmarked. */
class HostileTraceTest {
  private static final Duration ENDLESS = Duration.ofMinutes(2);

  @Test
  void standsAThousandCausesAndAThousandChecks() {
    Assertions.assertTimeoutPreemptively(
        ENDLESS,
        () -> {
          RandomFaults random = new RandomFaults(1);
          Trace trace = Trace.begin(random.fault(1_000, 1_000));
          assertThat(trace.next().minutes()).isPositive();
          for (FaultCheck check : trace.fault().checks()) {
            trace = trace.answer(check.id(), random.anyOf(check.answers()));
          }
          assertThat(trace.ranking().stream().mapToDouble(Ranked::chance).sum())
              .isCloseTo(1, within(1e-12));
          assertThat(trace.expectedMinutes()).isFinite();
          assertThat(trace.trail()).hasSize(1_000);
          assertThat(trace.contradiction()).isPresent();
        });
  }

  @Test
  void standsAPageWithoutCausesOrChecks() {
    Trace trace = Trace.begin(new RandomFaults(1).fault(0, 0));
    assertThat(trace.ranking()).hasSize(1);
    assertThat(trace.next().kind()).isEqualTo("yard");
    assertThat(trace.contradiction()).isEmpty();
    assertThat(trace.settled()).isFalse();
    assertThat(Trace.begin(new RandomFaults(1).fault(0, 3)).next().kind()).isIn("yard", "check");
  }
}
