package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import limberboard.boat.RecordedCase;
import limberboard.cases.SampleCases;
import limberboard.trace.Fault;
import org.junit.jupiter.api.Test;

/** With what cases have taught, the planner still finds the cheapest of all strategies. */
class LearnedPlanTest {
  private static Fault fault(List<RecordedCase> cases) {
    return Fault.of(
        SampleCases.workspace().library().symptom("water-forward").orElseThrow(),
        SampleCases.on("ruff"),
        SampleCases.workspace().library(),
        cases);
  }

  @Test
  void isAsCheapAsEveryStrategyTried() {
    List<RecordedCase> cases = new ArrayList<>();
    double before = Double.NaN;
    for (int i = 0; i < 4; i++) {
      EffortModel model = fault(cases).model();
      Situation now = model.beginning();
      double planned = new Planner().advise(model, now).best().expectedMinutes();
      assertThat(planned).isCloseTo(new EveryStrategy(model).cheapest(now), within(1e-6));
      assertThat(planned).as("cases change the plan's minutes").isNotEqualTo(before);
      before = planned;
      for (int n = 0; n < 5; n++) {
        cases.add(
            SampleCases.mended(
                "case-" + i + n,
                n < 3 ? "tank" : "stem-fitting",
                Map.of(
                    "taste", n % 2 == 0 ? "fresh" : "salt",
                    "hose", n < 3 ? "dry" : "drips-from-bolt")));
      }
    }
  }
}
