package limberboard.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import limberboard.boat.Fitting;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import org.junit.jupiter.api.Test;

class HiddenNumberTest {
  private static final String CLUTCH = "clutch-slips";

  private static Drill drill(Fault fault, long seed, int hides) {
    DrillOrder order =
        new DrillOrder(
            fault.page().id(),
            fault.fitting().boat().id(),
            fault.fitting().on(),
            seed,
            0,
            OptionalInt.of(hides));
    return Drill.of(order, fault);
  }

  @Test
  void everyCauseOfEverySymptomHasANumberOfItsOwnWithEachSeed() {
    for (Page<Symptom> page : DrillDemo.workspace().library().all(Symptom.class)) {
      for (long seed = 0; seed < 20; seed++) {
        Set<Integer> numbers = new HashSet<>();
        for (var cause : page.details().causes()) {
          int number = HiddenNumber.of(page.id(), cause.id(), seed);
          assertThat(number).isBetween(Course.LEAST_HIDDEN, Course.MOST_HIDDEN);
          numbers.add(number);
        }
        assertThat(numbers).as(page.id()).hasSameSizeAs(page.details().causes());
      }
    }
  }

  @Test
  void aDrillHidesWhatItsNumberSaysOnWhateverDay() {
    Fault fault = DrillDemo.fault(CLUTCH, "dunlin");
    Fitting later = new Fitting(fault.fitting().boat(), LocalDate.of(2034, 8, 1));
    Fault then = Fault.of(fault.page(), later, DrillDemo.workspace().library(), List.of());
    for (FaultCause cause : fault.causes()) {
      int number = HiddenNumber.of(CLUTCH, cause.id(), 7);
      assertThat(drill(fault, 7, number).hiddenCause().id()).isEqualTo(cause.id());
      assertThat(drill(then, 7, number).hiddenCause().id()).isEqualTo(cause.id());
    }
  }

  @Test
  void theNumberOfACauseThatTheBoatCannotHaveIsRefused() {
    Fault fault = DrillDemo.fault("water-in-forward-cabin", "greenshank");
    int number = HiddenNumber.of("water-in-forward-cabin", "bowsprit-seal", 7);
    assertThatThrownBy(() -> drill(fault, 7, number))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(number + " hides no cause that Greenshank can have");
    assertThatThrownBy(() -> drill(fault, 8, number)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void withoutANumberTheSeedDraws() {
    Fault fault = DrillDemo.fault(CLUTCH, "dunlin");
    Drill drawn = DrillDemo.drill(fault, 7, 0);
    assertThat(HiddenFault.cause(fault, 7)).isEqualTo(fault.causes().indexOf(drawn.hiddenCause()));
  }
}
