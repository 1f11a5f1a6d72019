package limberboard.rigging;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import limberboard.library.page.RopePlan;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;
import limberboard.workings.QuantityWords;

/** Length = sum of factor × dimension, and what is added, rounded up to a step. */
final class LengthRule {
  private static final double USUAL_STEP = 0.5;
  private static final double HAIR = 1e-9;

  private final Dimensions dimensions;

  LengthRule(Dimensions dimensions) {
    this.dimensions = dimensions;
  }

  RopeLength of(RopePlan rope) {
    Sum sum = new Sum();
    rope.length().forEach((name, factor) -> addDimension(sum, name, factor));
    rope.add().forEach((what, extra) -> addExtra(sum, what, extra));
    if (sum.parts.isEmpty()) {
      sum.wrong.add("the page states no length for it");
    }
    String written = String.join(" + ", sum.parts);
    if (!sum.wrong.isEmpty()) {
      return new RopeLength.Open(sum.missing, String.join("; ", sum.wrong), written);
    }
    double step = step(rope);
    double cut = step * Math.ceil(sum.metres / step - HAIR);
    return new RopeLength.Cut(
        sum.metres, cut, rope.length().isEmpty(), finished(sum, written, cut));
  }

  private static String finished(Sum sum, String written, double cut) {
    String total = Figures.metres(sum.metres);
    String equals = sum.parts.size() == 1 && written.startsWith(total) ? "" : " = " + total;
    String rounded = Figures.metres(cut);
    return written + equals + (rounded.equals(total) ? "" : ", cut " + rounded);
  }

  private static double step(RopePlan rope) {
    return rope.cutTo()
        .map(fixed -> KnownUnit.METRES.of(fixed.quantity()).orElse(USUAL_STEP))
        .filter(step -> step > 0)
        .orElse(USUAL_STEP);
  }

  private void addDimension(Sum sum, String name, double factor) {
    OptionalDouble value = dimensions.metres(name);
    String times = factor == 1 ? "" : QuantityWords.plain(factor) + " × ";
    if (value.isEmpty()) {
      sum.missing.add(name);
      sum.wrong.add(dimensions.open(name));
      sum.parts.add(times + "? (" + Dimensions.spoken(name) + ")");
      return;
    }
    if (!(factor > 0 && Double.isFinite(factor))) {
      sum.wrong.add("the page counts " + Dimensions.spoken(name) + " no times");
    }
    sum.metres += factor * value.getAsDouble();
    sum.parts.add(
        times + Figures.metres(value.getAsDouble()) + " (" + Dimensions.spoken(name) + ")");
  }

  private static void addExtra(Sum sum, String what, Amount.Fixed extra) {
    OptionalDouble value = KnownUnit.METRES.of(extra.quantity());
    if (value.isEmpty()) {
      sum.wrong.add("what is added for " + what + " is no length");
      sum.parts.add("? (" + what + ")");
      return;
    }
    sum.metres += value.getAsDouble();
    sum.parts.add(Figures.metres(value.getAsDouble()) + " (" + what + ")");
  }

  /** A sum as it grows. */
  private static final class Sum {
    private final List<String> parts = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();
    private double metres;
  }
}
