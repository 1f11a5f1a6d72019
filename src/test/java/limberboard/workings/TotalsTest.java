package limberboard.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import org.junit.jupiter.api.Test;

/** Shopping for several jobs at once. */
class TotalsTest {
  private final Workings workings =
      new Workings(Optional.of(Fixtures.boat()), QuantityWords.METRIC);
  private final Page<Material> sealant =
      Fixtures.material("ml", List.of(Fixtures.pack("tube", "75 ml")));

  @Test
  void packsAreBoughtForTheSumAndNotForEachJob() {
    Needed one = workings.needed(Fixtures.use("amount", "30 ml", null, null), sealant);
    Needed two = workings.needed(Fixtures.use("bead", "gasket", "6 mm", "3 mm"), sealant);
    List<Totals.Total> totals = new Totals().of(List.of(one, two));
    assertThat(totals).hasSize(1);
    assertThat(totals.get(0).outcome())
        .isInstanceOfSatisfying(
            AmountOutcome.Reckoned.class,
            sum -> assertThat(QuantityWords.METRIC.computed(sum.amount())).isEqualTo("66.9 ml"));
    assertThat(totals.get(0).purchase()).get().extracting(Purchase::count).isEqualTo(1);
  }

  @Test
  void whatCannotBeAddedIsKept() {
    Needed known = workings.needed(Fixtures.use("amount", "30 ml", null, null), sealant);
    Needed open = workings.needed(Fixtures.use("amount", "coaming", null, null), sealant);
    Totals.Total total = new Totals().of(List.of(known, open)).get(0);
    assertThat(total.open()).containsExactly(open.outcome());
    assertThat(total.outcome()).isInstanceOf(AmountOutcome.Reckoned.class);
  }

  @Test
  void nothingKnownStaysOpen() {
    Needed open = workings.needed(Fixtures.use("amount", "coaming", null, null), sealant);
    Totals.Total total = new Totals().of(List.of(open)).get(0);
    assertThat(total.outcome()).isInstanceOf(AmountOutcome.ToMeasure.class);
    assertThat(total.purchase()).isEmpty();
  }
}
