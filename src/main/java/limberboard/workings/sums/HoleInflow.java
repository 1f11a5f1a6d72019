package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.LITRES;
import static limberboard.library.value.KnownUnit.LITRES_A_MINUTE;
import static limberboard.library.value.KnownUnit.METRES;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static limberboard.library.value.KnownUnit.MINUTES;

import java.util.List;

/** How fast water comes in through a hole below the waterline: Torricelli's law. */
final class HoleInflow implements Sum {
  private static final int LARGE = 4;
  private static final double SPACE_L = 1000;

  @Override
  public SumText text() {
    return new SumText(
        "hole-inflow",
        "Water coming in through a hole",
        "How fast does water come in through a hole, and how long does it take to fill the bilge?",
        "Q = C · A · √(2 · g · h), with A = π/4 · d²: Q the flow, C the discharge coefficient of"
            + " the edge, d the diameter, h the depth of the hole's middle below the water outside,"
            + " g = 9.80665 m/s²",
        "Torricelli's law with discharge coefficients of hydraulics handbooks: sharp edge 0.60,"
            + " short pipe 0.82, rounded edge 0.98 (from memory)",
        "A hole that is small against its depth, with air on the inside, in a boat lying still."
            + " Once the water inside covers the hole, less comes in; under way or in waves it can"
            + " be more. The water's density does not matter.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Number.of("diameter", "Diameter of the hole", MILLIMETRE, 20, 0.1, 1000)
            .soundWithin(1, 200),
        Input.Number.of("depth", "Depth below the water outside", METRES, 0.5, 0.001, 100)
            .soundWithin(0.02, 10),
        Orifice.edge(),
        Input.Number.of("space", "Water that may come in", LITRES, SPACE_L, 0.1, 1e6));
  }

  @Override
  public Answer work(CheckedInputs given) {
    double d = given.number("diameter");
    double h = given.number("depth");
    double c = Orifice.coefficient(given.word("edge"));
    double flow = Orifice.litresAMinute(c, d, h);
    double minutes = given.number("space") / flow;
    return Answer.empty()
        .working(
            "A = π/4 × ("
                + Answer.say(d, MILLIMETRE)
                + ")² = "
                + Answer.say(Orifice.areaMm2(d))
                + " mm²")
        .working(
            "Q = "
                + Answer.say(c)
                + " × A × √(2 × 9.81 m/s² × "
                + Answer.say(h, METRES)
                + ") = "
                + Answer.say(flow, LITRES_A_MINUTE))
        .result("flow", "Comes in", flow, LITRES_A_MINUTE)
        .result("time", "Time until " + Answer.say(given.number("space"), LITRES), minutes, MINUTES)
        .warnIf(
            d / 1000 * LARGE > h,
            "The hole is large against its depth, so the depth differs from its top to its foot;"
                + " the flow is only rough.");
  }
}
