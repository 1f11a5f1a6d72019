package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import limberboard.effort.Planner;
import limberboard.effort.Policy;
import org.junit.jupiter.api.Test;

/** Pages no one should write. How often the planner is asked is counted; speed is benchmarked. */
class HostileTraceTest {
  @Test
  void standsAThousandCausesAndAThousandChecks() {
    RandomFaults random = new RandomFaults(1);
    AtomicInteger asked = new AtomicInteger();
    Planner planner = new Planner();
    Policy counting =
        (model, now) -> {
          asked.incrementAndGet();
          return planner.advise(model, now);
        };
    Trace trace = Trace.begin(random.fault(1_000, 1_000), counting);
    assertThat(trace.next().minutes()).isPositive();
    assertThat(asked).hasValue(1);
    for (FaultCheck check : trace.fault().checks()) {
      trace = trace.answer(check.id(), random.anyOf(check.answers()));
    }
    assertThat(asked).as("answers are weighed without planning anew").hasValue(1);
    assertThat(trace.ranking().stream().mapToDouble(RankedCause::chance).sum())
        .isCloseTo(1, within(1e-12));
    assertThat(trace.expectedMinutes()).isFinite();
    assertThat(trace.trail()).hasSize(1_000);
    assertThat(trace.contradiction()).isPresent();
    assertThat(asked).as("one plan serves everything that is asked of it").hasValueLessThan(4);
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
