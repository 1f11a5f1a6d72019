package limberboard.desktop.upkeep.sums;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.upkeep.sums.SumForm.Origin;
import limberboard.library.value.KnownUnit;
import limberboard.workings.QuantityWords;
import limberboard.workings.sums.Input;
import limberboard.workings.sums.Reckoning;
import limberboard.workings.sums.Sum;
import limberboard.workings.sums.Sums;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SumFormTest {
  private final SumForm hole = form("hole-inflow", Optional.empty());

  private static SumForm form(String id, Optional<Boat> boat) {
    return new SumForm(Sums.ofTheTrade().sum(id).orElseThrow(), boat);
  }

  private static Optional<Boat> stint() {
    return SmallWorkspace.read().boat("stint");
  }

  private static Input input(SumForm form, String id) {
    return form.sum().inputs().stream()
        .filter(input -> input.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static String result(SumForm form) {
    Reckoning.Done done = (Reckoning.Done) form.reckoning();
    return done.answer().results().get(0).text(QuantityWords.METRIC);
  }

  static Sums sums() {
    return Sums.ofTheTrade();
  }

  static java.util.List<Sum> all() {
    return sums().all();
  }

  @ParameterizedTest
  @MethodSource("all")
  void everySumIsReckonedWithWhatStandsInItsFields(Sum sum) {
    SumForm form = new SumForm(sum, stint());
    assertThat(form.isRight()).isTrue();
    assertThat(form.isTouched()).isFalse();
    assertThat(form.reckoning()).isInstanceOf(Reckoning.Done.class);
    for (Input input : sum.inputs()) {
      assertThat(SumWords.hint(input, form, Optional.of("Stint")))
          .isNotNull()
          .doesNotContain("null");
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void writingAllNumbersInOtherUnitsChangesNoResult(Sum sum) {
    SumForm usual = new SumForm(sum, Optional.empty());
    SumForm other = new SumForm(sum, Optional.empty());
    for (Input input : sum.inputs()) {
      if (input instanceof Input.Number number) {
        KnownUnit last = SumForm.units(number).get(SumForm.units(number).size() - 1);
        other.unit(number, last);
        String converted = other.text(number);
        other.type(number, converted + " ");
        assertThat(other.problem(number)).as(number.id()).isEmpty();
      }
    }
    assertThat(result(other)).isEqualTo(result(usual));
  }

  /** Torricelli by hand: 0.6 × π/4 × (0.038 m)² × √(2 × 9.80665 × 0.4) = 1.906 l/s, 114 l/min. */
  @Test
  void whatIsTypedIsReckoned() {
    hole.type(input(hole, "diameter"), "38");
    hole.type(input(hole, "depth"), "400 mm");
    assertThat(result(hole)).isEqualTo("114 l/min");
    assertThat(hole.origin(input(hole, "diameter"))).isEqualTo(Origin.TYPED);
    hole.reset();
    assertThat(hole.text(input(hole, "diameter"))).isEqualTo("20");
    assertThat(hole.isTouched()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "38mm | ''",
        "3.8 cm | ''",
        ".5 | ''",
        "'' | ''",
        "1,5 | Write 1.5, with a point.",
        "-3 | This cannot be below nought.",
        "wide | This is no number; write one such as 20 or 2.5.",
        "3 l | 3 l cannot be converted; write it such as 20 mm.",
        "5000 | 5000 mm cannot be computed; it is 0.1 mm to 1000 mm.",
        "1e9999 | This is no number; write one such as 20 or 2.5.",
        "NaN | This is no number; write one such as 20 or 2.5."
      })
  void whatIsWrongIsSaidBesideTheField(String typed, String problem) {
    Input diameter = input(hole, "diameter");
    hole.type(diameter, typed);
    assertThat(hole.problem(diameter)).isEqualTo(problem);
    assertThat(hole.isRight()).isEqualTo(problem.isEmpty());
  }

  @Test
  void aNumberOfTheUsualIsConvertedAndOneThatWasTypedCountsInTheNewUnit() {
    Input.Number diameter = (Input.Number) input(hole, "diameter");
    hole.unit(diameter, KnownUnit.CENTIMETRE);
    assertThat(hole.text(diameter)).isEqualTo("2");
    hole.type(diameter, "4");
    hole.unit(diameter, KnownUnit.MILLIMETRE);
    assertThat(hole.text(diameter)).isEqualTo("4");
    assertThat(SumForm.units(diameter))
        .containsExactly(KnownUnit.MILLIMETRE, KnownUnit.CENTIMETRE, KnownUnit.METRES);
  }

  @Test
  void theBoatsOwnStandsWhereItIsKnownUntilOneChoosesOtherwise() {
    SumForm anodes = form("anode-mass", stint());
    Input water = input(anodes, "water");
    assertThat(anodes.text(water)).isEqualTo("fresh");
    assertThat(anodes.origin(water)).isEqualTo(Origin.BOAT);
    assertThat(SumWords.hint(water, anodes, Optional.of("Stint"))).isEqualTo("As Stint has it.");
    anodes.type(water, "salt");
    assertThat(anodes.text(water)).isEqualTo("salt");
    anodes.follow(SmallWorkspace.read().boat("knot"));
    assertThat(anodes.text(water)).isEqualTo("salt");
    anodes.reset();
    assertThat(anodes.origin(water)).isEqualTo(Origin.BOAT);
    Input fitted = input(anodes, "fitted");
    assertThat(anodes.text(fitted)).isEmpty();
    assertThat(SumWords.hint(fitted, anodes, Optional.empty())).startsWith("May be left empty.");
  }
}
