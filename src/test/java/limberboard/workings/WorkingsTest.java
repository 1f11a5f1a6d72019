package limberboard.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.MaterialUse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts against arithmetic done by hand and against tables of the trade. */
class WorkingsTest {
  private final Workings workings =
      new Workings(Optional.of(Fixtures.boat()), QuantityWords.METRIC);

  @ParameterizedTest(name = "{0} {1} {2} {3} = {5}")
  @CsvFileSource(resources = "amounts.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
  void amountsAreTheProductOfTheirSides(
      String kind,
      String first,
      String second,
      String third,
      String unit,
      String amount,
      String working,
      String source) {
    Needed needed =
        workings.needed(Fixtures.use(kind, first, second, third), Fixtures.material(unit));
    assertThat(needed.outcome()).as(source).isInstanceOf(AmountOutcome.Reckoned.class);
    assertThat(words(needed)).as(source).isEqualTo(amount);
    assertThat(needed.working()).isEqualTo(working == null ? "" : working);
  }

  @Test
  void aMeasureThatTheModelLacksIsToBeMeasured() {
    Needed needed =
        workings.needed(
            Fixtures.use("bead", "coaming-seal", "6 mm", "3 mm"), Fixtures.material("ml"));
    assertThat(needed.outcome())
        .isEqualTo(
            new AmountOutcome.ToMeasure(
                "coaming-seal",
                "to be measured on the boat: the page of the Cruiser does not give its coaming"
                    + " seal"));
    assertThat(needed.purchase()).isEmpty();
  }

  @Test
  void withoutABoatMeasuredAmountsStayOpenAndFixedOnesDoNot() {
    Workings noBoat = new Workings(Optional.empty(), QuantityWords.METRIC);
    assertThat(
            noBoat
                .needed(Fixtures.use("pieces", "shrouds", null, null), Fixtures.material("piece"))
                .outcome())
        .isEqualTo(new AmountOutcome.ToMeasure("shrouds", "depends on the boat: its shrouds"));
    assertThat(
            words(
                noBoat.needed(
                    Fixtures.use("bead", "400 mm", "6 mm", "3 mm"), Fixtures.material("ml"))))
        .isEqualTo("7.2 ml");
  }

  @Test
  void aUseWithoutAnAmountIsNotStated() {
    MaterialUse bare = new MaterialUse("sealant", null, null, null, null, null, null, null, null);
    assertThat(workings.needed(bare, Fixtures.material("ml")).outcome())
        .isEqualTo(new AmountOutcome.NotStated());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bead|400 mm|6 g|3 mm|ml|the width of the bead is written 6 g|write a length, such as 6 mm",
        "bead|400 mm|6 mm|3 mm|g|the bead comes to ml, and Sealant is counted in g|write its amount"
            + " as a weight, such as 20 g",
        "coat|24 m|0.1 mm||ml|the area of the coat is written 24 m|write an area, such as 0.5 m2",
        "cord|1 m|2 m||m|the count of the cord is written 2 m|write a plain number, such as 2",
        "cord|1 m|2||piece|the cord comes to m, and Sealant is counted in pieces|write its amount"
            + " as a plain number, such as 2",
        "pieces|3||| ml|pieces are asked for, and Sealant is counted in ml|write its amount as a"
            + " volume, such as 50 ml",
        "amount|50 g|||ml|the amount is written 50 g|write a volume, such as 50 ml",
        "amount|oil|||m|the amount is written 2.2 l (oil)|write a length, such as 1.2 m"
      })
  void dimensionsThatDoNotAgreeAreToldAndNothingIsThrown(
      String kind,
      String first,
      String second,
      String third,
      String unit,
      String wrong,
      String right) {
    Needed needed =
        workings.needed(Fixtures.use(kind, first, second, third), Fixtures.material(unit.strip()));
    assertThat(needed.outcome()).isEqualTo(new AmountOutcome.Mistaken(wrong, right));
  }

  @Test
  void thePackSaysHowManyOfTheseItHolds() {
    Needed needed =
        workings.needed(
            Fixtures.use("bead", "400 mm", "6 mm", "3 mm"),
            Fixtures.material("ml", List.of(Fixtures.pack("cartridge", "290 ml"))));
    assertThat(needed.working())
        .isEqualTo("400 × 6 × 3 mm = 7.2 ml; a 290 ml cartridge holds 40 of these");
  }

  @Test
  void aPackThatHoldsItOnlyOnceSaysNothing() {
    Needed needed =
        workings.needed(
            Fixtures.use("amount", "200 ml", null, null),
            Fixtures.material("ml", List.of(Fixtures.pack("can of 250 ml", "250 ml"))));
    assertThat(needed.working()).isEmpty();
    assertThat(needed.purchase()).get().extracting(Purchase::count).isEqualTo(1);
  }

  private static String words(Needed needed) {
    return needed.outcome() instanceof AmountOutcome.Reckoned reckoned
        ? QuantityWords.METRIC.computed(reckoned.amount())
        : needed.outcome().toString();
  }
}
