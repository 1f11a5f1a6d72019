package limberboard.workings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.library.page.Material.Pack;
import limberboard.library.value.CountingUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which packs are bought. */
class PackChooserTest {
  private static final int EXTRA = 4;

  @ParameterizedTest(name = "{0} ml of packs {1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "7.2|290|1×290|282.8",
        "7.2|290 75|1×75|67.8",
        "280|290 20|1×290|10",
        "300|290 75|4×75|0",
        "310|290 75|1×290 1×75|55",
        "100|20 1000|5×20|0",
        "290|290|1×290|0",
        "290.0000000001|290|1×290|0",
        "2900|290|10×290|0",
        "5000000|1|5000000×1|0"
      })
  void theLeastIsLeftOverWithFewPacks(double needed, String sizes, String bought, double leftOver) {
    Purchase purchase = chooser(sizes.split(" ")).choose(needed).orElseThrow();
    assertThat(said(purchase)).isEqualTo(bought);
    assertThat(purchase.leftOver()).isCloseTo(leftOver, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "NaN", "Infinity"})
  void nothingIsBoughtForNothing(double needed) {
    assertThat(chooser("290").choose(needed)).isEmpty();
  }

  @Test
  void packsThatHoldNothingOfItAreNotBought() {
    List<Pack> packs = List.of(Fixtures.pack("box", "290 g"));
    assertThat(new PackChooser(packs, CountingUnit.ML).choose(10)).isEmpty();
  }

  @Test
  void thereAreNoEmptyPacks() {
    assertThatThrownBy(() -> Fixtures.pack("box", "0 ml"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a pack holds more than nothing");
  }

  /** Every purchase of at most two sizes is tried. */
  @Property(tries = 300, seed = "20261125")
  void noOtherPurchaseLeavesLess(
      @ForAll @IntRange(min = 1, max = 400) int needed,
      @ForAll @Size(min = 1, max = 4) @UniqueElements
          List<@IntRange(min = 5, max = 120) Integer> sizes) {
    int largest = sizes.stream().mapToInt(Integer::intValue).max().orElseThrow();
    int most = (needed + largest - 1) / largest + EXTRA;
    int least = Integer.MAX_VALUE;
    for (int first : sizes) {
      for (int second : sizes) {
        for (int i = 0; i <= most; i++) {
          for (int j = 0; i + j <= most; j++) {
            int left = i * first + j * second - needed;
            least = left >= 0 ? Math.min(least, left) : least;
          }
        }
      }
    }
    Optional<Purchase> chosen =
        chooser(sizes.stream().map(String::valueOf).toArray(String[]::new)).choose(needed);
    assertThat(chosen).isPresent();
    assertThat(chosen.get().leftOver()).isCloseTo(least, within(1e-9));
    assertThat(chosen.get().count()).isLessThanOrEqualTo(most);
  }

  private static PackChooser chooser(String... sizes) {
    List<Pack> packs = new ArrayList<>();
    Arrays.stream(sizes).forEach(size -> packs.add(Fixtures.pack("tube", size + " ml")));
    return new PackChooser(packs, CountingUnit.ML);
  }

  private static String said(Purchase purchase) {
    return purchase.packs().stream()
        .map(
            counted ->
                counted.count()
                    + "×"
                    + QuantityWords.METRIC
                        .written(counted.pack().holds().quantity())
                        .replace(" ml", ""))
        .collect(Collectors.joining(" "));
  }
}
