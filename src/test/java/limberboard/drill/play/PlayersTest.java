package limberboard.drill.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import limberboard.drill.Counsel;
import limberboard.drill.DrillDemo;
import limberboard.drill.mark.DrillMark;
import limberboard.trace.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlayersTest {
  private static final int DRILLS = 60;

  @ParameterizedTest
  @CsvSource({
    "oil-in-keel-compartment, redshank",
    "water-under-cockpit, whimbrel",
    "toilet-smells, redshank"
  })
  void marksAreFair(String symptom, String boat) {
    Fault fault = DrillDemo.fault(symptom, boat);
    Counsel counsel = new Counsel(fault);

    PlayedDrills advice = PlayedDrills.of(fault, counsel, new FollowsAdvice().careful(), DRILLS);
    PlayedDrills chance = PlayedDrills.of(fault, counsel, new AsksByChance(1).careful(), DRILLS);
    PlayedDrills yard = PlayedDrills.of(fault, counsel, new CallsTheYard(), DRILLS);

    assertThat(advice.most(DrillMark::regret))
        .isLessThanOrEqualTo(advice.most(DrillMark::doubt) + 0.05);
    assertThat(advice.most(mark -> mark.dangers().size())).isZero();
    assertThat(chance.mean(DrillMark::regret))
        .isGreaterThan(5 * advice.mean(DrillMark::regret) + 5);
    assertThat(yard.yardAtOnce()).isEqualTo(DRILLS);
    assertThat(yard.mean(DrillMark::regret)).isGreaterThan(30);
  }

  /** The spread of the skill mark is at most a fifth of that of the minutes. */
  @Test
  void marksDoNotDependOnLuck() {
    List<DrillMark> marks = new ArrayList<>();
    for (String symptom : List.of("oil-in-keel-compartment", "clutch-slips", "furler-jams")) {
      String boat = symptom.startsWith("oil") ? "whimbrel" : "greenshank";
      Fault fault = DrillDemo.fault(symptom, boat);
      Counsel counsel = new Counsel(fault);
      marks.addAll(
          PlayedDrills.of(fault, counsel, ByRule.mostTellingFirst().careful(), DRILLS).marks());
    }
    PlayedDrills all = new PlayedDrills(marks);
    assertThat(all.mean(DrillMark::regret)).isGreaterThan(1);
    assertThat(all.spread(DrillMark::regret))
        .isLessThanOrEqualTo(0.2 * all.spread(mark -> mark.run().minutes()));
  }
}
