package limberboard.workings.cordage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import limberboard.library.value.RopeConstruction;
import limberboard.library.value.RopeEnd;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Held against published tables and formulas. */
class CordageTest {
  private static final double FOOT = 0.3048;
  private static final double KNOT = 0.514444;
  private static final double POUND_FORCE = 4.448222;

  /** B. Toss, The Complete Rigger's Apprentice, loading formulas: lb = ft² × kn² × 0.00431. */
  @ParameterizedTest
  @CsvSource({"300, 20, 517.2", "450, 15, 436.4", "150, 30, 581.9"})
  void theSheetPullsAsInTheFormulaInFeetAndPounds(double squareFeet, double knots, double pounds) {
    double newtons = squareFeet * FOOT * FOOT * SailLoad.pressure(knots * KNOT);
    assertThat(newtons / POUND_FORCE).isCloseTo(pounds, withinPercentage(0.2));
  }

  /**
   * The same source: lb = E²·P²·0.00431·V² ÷ (√(P² + E²)·(E − X)). For P 35 ft, E 12 ft, 20 kn: 144
   * × 1225 × 1.724 ÷ (37 × 12) = 684.9 lb; with X 4 ft, ÷ (37 × 8) = 1027.4 lb.
   */
  @ParameterizedTest
  @CsvSource({"0, 684.9", "4, 1027.4"})
  void theMainsheetPullsAsInTheFormulaInFeetAndPounds(double x, double pounds) {
    double area = SailLoad.mainsheetArea(35 * FOOT, 12 * FOOT, x * FOOT);
    assertThat(area * SailLoad.pressure(20 * KNOT) / POUND_FORCE)
        .isCloseTo(pounds, withinPercentage(0.2));
  }

  /** World Meteorological Organization, Manual on Codes, table 1100: bounds in m/s. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.3, 1.5",
    "2, 1.6, 3.3",
    "3, 3.4, 5.4",
    "4, 5.5, 7.9",
    "5, 8.0, 10.7",
    "6, 10.8, 13.8",
    "7, 13.9, 17.1",
    "8, 17.2, 20.7",
    "9, 20.8, 24.4",
    "10, 24.5, 28.4"
  })
  void aBeaufortNumbersWindLiesWithinItsBounds(int beaufort, double from, double to) {
    assertThat(SailLoad.wind(beaufort)).isBetween(from, to);
  }

  /** BS 4928 for polyester, in tonnes-force, as the OCIMF Mooring Equipment Guidelines print it. */
  @ParameterizedTest
  @CsvSource({
    "8, 1.0", "10, 1.6", "12, 2.3", "14, 3.2", "16, 4.1", "18, 5.1", "20, 6.3", "24, 9.5"
  })
  void laidPolyesterIsReckonedBelowTheStandard(double millimetres, double tonnes) {
    assertThat(RopeStrength.breaking(RopeConstruction.POLYESTER_LAID, millimetres))
        .isBetween(0.8 * tonnes * 9806.65, tonnes * 9806.65);
  }

  /** A handbook table of inch sizes (Engineering ToolBox, polyester rope, 3 and 8 strands), kN. */
  @ParameterizedTest
  @CsvSource({
    "6.35, 5.85",
    "7.94, 9.1",
    "9.53, 12.9",
    "12.7, 22.6",
    "15.88, 34.8",
    "19.05, 49.8",
    "25.4, 88"
  })
  void laidPolyesterIsReckonedBelowTheHandbook(double millimetres, double kilonewtons) {
    assertThat(RopeStrength.breaking(RopeConstruction.POLYESTER_LAID, millimetres) / 1000)
        .isBetween(0.9 * kilonewtons, kilonewtons);
  }

  /** EN 564, accessory cord, least breaking load in kN; from memory. */
  @ParameterizedTest
  @CsvSource({"4, 3.2", "5, 5.0", "6, 7.2", "7, 9.8", "8, 12.8"})
  void braidedPolyesterIsReckonedAsAccessoryCord(double millimetres, double kilonewtons) {
    assertThat(RopeStrength.breaking(RopeConstruction.POLYESTER_BRAID, millimetres) / 1000)
        .isCloseTo(kilonewtons, within(0.01));
  }

  /** BS 4928 for three-strand polyamide, in kilograms-force; from memory. */
  @ParameterizedTest
  @CsvSource({"8, 1350", "10, 2080", "12, 3000", "14, 4100", "16, 5300"})
  void laidPolyamideIsReckonedBelowTheStandard(double millimetres, double kilograms) {
    assertThat(RopeStrength.breaking(RopeConstruction.POLYAMIDE_LAID, millimetres))
        .isBetween(0.9 * kilograms * 9.80665, kilograms * 9.80665);
  }

  /** By hand: 1000 N × 3 ÷ (0.5 × 0.75) = 8 kN, and 8 kN asks for 6.32 mm of 0.2·d². */
  @ParameterizedTest
  @CsvSource({"KNOT, 8000, 8", "EYE_SPLICE, 4444.4, 5", "WHIPPING, 4000, 5"})
  void lossesAndSafetyAreMultiplied(RopeEnd end, double needed, double millimetres) {
    assertThat(RopeStrength.needed(1000, end)).isCloseTo(needed, within(0.1));
    assertThat(RopeStrength.thinnest(RopeConstruction.POLYESTER_BRAID, needed))
        .hasValue(millimetres);
  }

  @ParameterizedTest
  @EnumSource(RopeConstruction.class)
  void aLoadBeyondAllStockIsNotCarried(RopeConstruction construction) {
    List<Double> stocked = RopeStrength.stocked(construction);
    double strongest = RopeStrength.breaking(construction, stocked.get(stocked.size() - 1));
    assertThat(RopeStrength.thinnest(construction, strongest)).isPresent();
    assertThat(RopeStrength.thinnest(construction, strongest + 1)).isEmpty();
    assertThat(stocked).isSorted();
  }

  /** By hand: 1.8 kN × 2 × 0.7 × 0.5 × 0.75 = 945 N a turn; 2 kN × 3 ÷ 945 N = 6.35 turns. */
  @ParameterizedTest
  @CsvSource({"2000, 7", "1890, 6", "1891, 7", "100, 3", "0, 3"})
  void aLashingTakesSoManyTurns(double load, int turns) {
    assertThat(Lashing.turns(load, 1800)).isEqualTo(turns);
  }

  @Property(seed = "20261125")
  void whatIsChosenCarriesTheLoadAndTheNextThinnerDoesNot(
      @ForAll RopeConstruction construction,
      @ForAll RopeEnd end,
      @ForAll @DoubleRange(min = 1, max = 8000) double load) {
    double needed = RopeStrength.needed(load, end);
    List<Double> stocked = RopeStrength.stocked(construction);
    double chosen = RopeStrength.thinnest(construction, needed).orElse(Double.MAX_VALUE);
    for (double size : stocked) {
      boolean carries = RopeStrength.breaking(construction, size) >= needed;
      assertThat(size >= chosen).as("%s mm", size).isEqualTo(carries);
    }
  }

  @Property(seed = "20261125")
  void aLashingsTurnsHoldTheLoad(
      @ForAll @DoubleRange(min = 0, max = 50_000) double load,
      @ForAll @DoubleRange(min = 100, max = 30_000) double breaking) {
    int turns = Lashing.turns(load, breaking);
    assertThat(Lashing.holds(turns, breaking) / RopeStrength.SAFETY)
        .isGreaterThanOrEqualTo(load * (1 - 1e-6));
    assertThat(turns == 3 || Lashing.holds(turns - 1, breaking) / RopeStrength.SAFETY < load)
        .isTrue();
  }
}
