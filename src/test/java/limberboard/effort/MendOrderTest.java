package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.RandomModels.AccessShape;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** The order of mends against all orders there are. */
class MendOrderTest {
  private static final double EXACT = 1e-9;

  /**
   * J. B. Kadane and H. A. Simon, <i>Optimal strategies for a class of constrained sequential
   * problems</i>, Annals of Statistics 5(2), 1977: one thing is hidden in one of several places,
   * and looking in the order of chance over cost is the best.
   */
  @Property(tries = 300, seed = "1977", edgeCases = EdgeCasesMode.NONE)
  void isTheBestOfAllOrdersWithoutAccess(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(min = 1, max = 6) int causes) {
    EffortModel model = new RandomModels(seed).model(causes, 0, 0, AccessShape.NONE);
    assertThat(byOrder(model)).isCloseTo(byTryingAll(model), within(EXACT));
  }

  /** Each mend behind at most one access, no access within another: still the best. */
  @Property(tries = 300, seed = "1972", edgeCases = EdgeCasesMode.NONE)
  void isTheBestOfAllOrdersWithSeparateAccess(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 6) int causes,
      @ForAll @IntRange(min = 1, max = 3) int access) {
    EffortModel model = new RandomModels(seed).model(causes, 0, access, AccessShape.ONE_EACH);
    assertThat(byOrder(model)).isCloseTo(byTryingAll(model), within(EXACT));
  }

  /**
   * Access that overlaps in any way: a plan that can be carried out, and at most a tenth dearer.
   */
  @Property(tries = 300, seed = "2010", edgeCases = EdgeCasesMode.NONE)
  void isNearTheBestOfAllOrdersWithAnyAccess(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 6) int causes,
      @ForAll @IntRange(min = 1, max = 4) int access) {
    EffortModel model = new RandomModels(seed).model(causes, 0, access, AccessShape.ANY);
    assertThat(byOrder(model))
        .isGreaterThanOrEqualTo(byTryingAll(model) - EXACT)
        .isLessThanOrEqualTo(byTryingAll(model) * 1.1);
  }

  /** A yard that has to search, cures that show later, access of any kind: a plan all the same. */
  @Property(tries = 1_000, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void isNeverBelowTheBestOfAllOrders(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 5) int causes,
      @ForAll @IntRange(min = 0, max = 3) int access,
      @ForAll AccessShape shape) {
    EffortModel model = new RandomModels(seed).fullModel(causes, 0, access, shape);
    assertThat(byOrder(model)).isGreaterThanOrEqualTo(byTryingAll(model) - EXACT);
  }

  private static double byOrder(EffortModel model) {
    return new MendOrder(model).minutes(model.beginning().chances(), new BitSet(), new BitSet());
  }

  private static double byTryingAll(EffortModel model) {
    return new EveryOrder(model).cheapest(model.beginning().chances(), new BitSet(), new BitSet());
  }

  @Test
  void takesTheLargestChancePerMinuteFirst() {
    MendOrder order = new MendOrder(withoutAccess());
    double minutes = order.minutes(new double[] {0.5, 0.3, 0.2}, new BitSet(), new BitSet());
    assertThat(order.order()).containsExactly(1, 0);
    assertThat(minutes).isCloseTo(10 + 0.7 * 60 + 0.2 * 200, within(EXACT));
  }

  @Test
  void doesNotTryAMendAgain() {
    MendOrder order = new MendOrder(withoutAccess());
    BitSet tried = new BitSet();
    tried.set(1);
    double minutes = order.minutes(new double[] {0.5, 0, 0.5}, new BitSet(), tried);
    assertThat(order.order()).containsExactly(0);
    assertThat(minutes).isCloseTo(60 + 0.5 * 200, within(EXACT));
  }

  @Test
  void callsTheYardWhenNoMendSavesItsTime() {
    MendOrder order = new MendOrder(withoutAccess());
    double minutes = order.minutes(new double[] {0.1, 0.02, 0.88}, new BitSet(), new BitSet());
    assertThat(order.order()).isEmpty();
    assertThat(minutes).isCloseTo(200, within(EXACT));
  }

  private static EffortModel withoutAccess() {
    return new EffortModel(
        new AnswerModel(new double[] {0.5, 0.3, 0.2}, List.of()),
        List.of(),
        List.of(
            new MendEffort(60, new BitSet(), 1, true),
            new MendEffort(10, new BitSet(), 1, true),
            new MendEffort(200, new BitSet(), 1, false)),
        new double[0],
        200);
  }

  @Test
  void paysForSharedAccessOnce() {
    BitSet sole = new BitSet();
    sole.set(0);
    EffortModel model =
        new EffortModel(
            new AnswerModel(new double[] {0.5, 0.5}, List.of()),
            List.of(),
            List.of(new MendEffort(10, sole, 1, true), new MendEffort(10, sole, 1, true)),
            new double[] {30},
            1_000);
    MendOrder order = new MendOrder(model);
    double[] even = {0.5, 0.5};
    assertThat(order.minutes(even, new BitSet(), new BitSet()))
        .isCloseTo(30 + 10 + 0.5 * 10, within(EXACT));
    assertThat(order.minutes(even, sole, new BitSet())).isCloseTo(10 + 0.5 * 10, within(EXACT));
  }
}
