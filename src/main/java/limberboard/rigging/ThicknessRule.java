package limberboard.rigging;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.page.RopePlan;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.RopeEnd;
import limberboard.workings.cordage.RopeStrength;

/**
 * Diameter = the thinnest stocked one that carries the pull after its losses, not thinner than hand
 * or clutch want it and not thicker than clutch or sheave take it; or the one the page states.
 */
final class ThicknessRule {
  private ThicknessRule() {}

  static Thickness of(RopePlan rope, Pull pull) {
    if (pull instanceof Pull.Open open) {
      return new Thickness.Open(open.why());
    }
    return pull instanceof Pull.Reckoned reckoned ? carrying(rope, reckoned) : stated(rope);
  }

  private static Thickness stated(RopePlan rope) {
    OptionalDouble size =
        rope.diameter().map(ThicknessRule::millimetres).orElse(OptionalDouble.empty());
    if (size.isEmpty()) {
      return new Thickness.Open("the page states neither a load nor a diameter for it");
    }
    double breaking = RopeStrength.breaking(rope.construction(), size.getAsDouble());
    return new Thickness.Chosen(
        size.getAsDouble(), breaking, 0, "stated; breaks at " + Figures.force(breaking));
  }

  private static Thickness carrying(RopePlan rope, Pull.Reckoned pull) {
    RopeEnd weakest = RopeStrength.weakest(rope.ends());
    double needed = RopeStrength.needed(pull.newtons(), weakest);
    OptionalDouble strong = RopeStrength.thinnest(rope.construction(), needed);
    String asked = asked(pull, weakest, needed);
    if (strong.isEmpty()) {
      return new Thickness.Open(
          "no stocked " + rope.construction().title() + " is thick enough: " + asked);
    }
    Optional<Bound> least = bound(rope.least(), 1);
    double from = Math.max(strong.getAsDouble(), least.map(Bound::millimetres).orElse(0.0));
    OptionalDouble size = RopeStrength.thinnestFrom(rope.construction(), from);
    Optional<Bound> most = bound(rope.most(), -1);
    if (size.isEmpty()
        || most.filter(limit -> size.getAsDouble() > limit.millimetres()).isPresent()) {
      return new Thickness.Open(clash(rope, from, most));
    }
    double breaking = RopeStrength.breaking(rope.construction(), size.getAsDouble());
    String chosen = asked + chosen(size.getAsDouble(), strong.getAsDouble(), breaking, least);
    return new Thickness.Chosen(size.getAsDouble(), breaking, needed, chosen);
  }

  private static String asked(Pull.Reckoned pull, RopeEnd weakest, double needed) {
    return pull.working()
        + "; × "
        + Figures.figures(RopeStrength.needed(1, weakest))
        + " ("
        + weakest.spoken()
        + ") = "
        + Figures.force(needed);
  }

  private static String chosen(double size, double strong, double breaking, Optional<Bound> least) {
    String raised =
        size > strong && least.isPresent()
            ? Figures.millimetres(strong) + "; for " + least.get().why() + " "
            : "";
    return ": " + raised + Figures.millimetres(size) + ", breaks at " + Figures.force(breaking);
  }

  private static String clash(RopePlan rope, double from, Optional<Bound> most) {
    String asked = "it has to be " + Figures.millimetres(from) + " or thicker";
    return most.map(
            limit ->
                asked
                    + ", and "
                    + limit.why()
                    + " takes no more than "
                    + Figures.millimetres(limit.millimetres())
                    + ": choose a stronger construction")
        .orElse(asked + ", and no " + rope.construction().title() + " of that size is stocked");
  }

  /**
   * A bound on the diameter.
   *
   * @param why whose bound it is
   */
  private record Bound(String why, double millimetres) {}

  /** The largest (sign 1) or smallest (sign -1) of the bounds. */
  private static Optional<Bound> bound(Map<String, Amount.Fixed> sizes, int sign) {
    Optional<Bound> best = Optional.empty();
    for (Map.Entry<String, Amount.Fixed> entry : sizes.entrySet()) {
      OptionalDouble size = millimetres(entry.getValue());
      if (size.isPresent()
          && (best.isEmpty() || sign * (size.getAsDouble() - best.get().millimetres()) > 0)) {
        best = Optional.of(new Bound(entry.getKey(), size.getAsDouble()));
      }
    }
    return best;
  }

  private static OptionalDouble millimetres(Amount.Fixed fixed) {
    OptionalDouble size = KnownUnit.MILLIMETRE.of(fixed.quantity());
    return size.isPresent() && size.getAsDouble() > 0 ? size : OptionalDouble.empty();
  }
}
