package limberboard.rigging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Head;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.RopeLoad;
import limberboard.library.page.RopePlan;
import limberboard.library.value.Amount;
import limberboard.library.value.QuantityText;
import limberboard.library.value.Range;
import limberboard.library.value.RopeConstruction;
import limberboard.library.value.RopeEnd;
import limberboard.library.value.RopeGroup;
import limberboard.library.value.RopePull;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** A longer dimension never gives a shorter rope, and a larger sail never a thinner one. */
class LongerIsNeverShorterTest {

  private static RopePlan plan(double factor, double step, RopePull by, RopeEnd end) {
    return new RopePlan(
        "a",
        "A",
        "",
        RopeGroup.HALYARD,
        null,
        Map.of("P", factor, "E", 1.0),
        Map.of("tail", metres(2)),
        Optional.of(metres(step)),
        1,
        RopeConstruction.POLYESTER_BRAID,
        Optional.empty(),
        Optional.of(new RopeLoad(Optional.of(by), Optional.empty(), Optional.of(5), 0.5, 2, null)),
        Map.of(),
        Map.of(),
        Optional.empty(),
        List.of(end));
  }

  private static Amount.Fixed metres(double value) {
    return new Amount.Fixed(QuantityText.parse("%.4f m".formatted(value)));
  }

  private static Dimensions rig(double p, double e) {
    Model model =
        new Model(
            Range.parse("2010/.."),
            null,
            new Model.Drawing("a.svg", "b.svg"),
            List.of(),
            List.of(),
            Map.of("P", metres(p), "E", metres(e), "I", metres(p), "J", metres(e)),
            null,
            null,
            null,
            null,
            null);
    Head head = new Head("Sloop", null, null, null, null, null, null, null);
    return new Dimensions(new Page<>("sloop", "articles/models/sloop.md", head, model, "", 1));
  }

  @Property(seed = "20261125")
  void aLongerDimensionNeverGivesAShorterRope(
      @ForAll @DoubleRange(min = 3, max = 20) double p,
      @ForAll @DoubleRange(min = 0, max = 5) double more,
      @ForAll @DoubleRange(min = 0.1, max = 9) double factor,
      @ForAll @DoubleRange(min = 0.1, max = 2) double step) {
    RopePlan plan = plan(factor, step, RopePull.MAINSAIL, RopeEnd.KNOT);
    RopeLength.Cut shorter = (RopeLength.Cut) new LengthRule(rig(p, 3)).of(plan);
    RopeLength.Cut longer = (RopeLength.Cut) new LengthRule(rig(p + more, 3)).of(plan);
    assertThat(longer.metres()).isGreaterThanOrEqualTo(shorter.metres() - 1e-9);
    assertThat(longer.cut()).isGreaterThanOrEqualTo(shorter.cut() - 1e-9);
    assertThat(shorter.cut()).isGreaterThanOrEqualTo(shorter.metres() - 1e-6);
    assertThat(shorter.cut() - shorter.metres()).isLessThan(step + 1e-3);
  }

  @Property(seed = "20261125")
  void aLargerSailNeverGivesAThinnerRope(
      @ForAll @DoubleRange(min = 3, max = 12) double p,
      @ForAll @DoubleRange(min = 0, max = 3) double more,
      @ForAll RopePull by,
      @ForAll RopeEnd end,
      @ForAll @IntRange(min = 2, max = 4) int e) {
    RopePlan plan = plan(1, 0.5, by, end);
    Thickness small = ThicknessRule.of(plan, new PullRule(rig(p, e)).of(plan));
    Thickness large = ThicknessRule.of(plan, new PullRule(rig(p + more, e)).of(plan));
    assertThat(size(large)).isGreaterThanOrEqualTo(size(small));
    assertThat(size(small)).isPositive();
  }

  private static double size(Thickness thickness) {
    return thickness instanceof Thickness.Chosen chosen ? chosen.millimetres() : Double.MAX_VALUE;
  }
}
