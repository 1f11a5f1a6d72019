package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.KILONEWTON;
import static limberboard.library.value.KnownUnit.METRES;
import static limberboard.library.value.KnownUnit.MILLIMETRE;

import java.util.Arrays;
import java.util.List;
import limberboard.workings.sums.Input.Option;

/** Tension of a wire from its measured stretch: Hooke's law. */
final class WireTension implements Sum {
  private static final double KILO = 1000;
  private static final double TOO_MUCH = 30;

  @Override
  public SumText text() {
    return new SumText(
        "wire-tension",
        "Tension of a wire from its stretch",
        "How tight is a shroud or stay when a measured length of it has stretched by so much?",
        "F = E · A · s / l, with A = π/4 · d²: s the stretch of the measured length l, d the wire's"
            + " diameter, E the modulus over the whole circle of the diameter",
        "Hooke's law; E = 107 kN/mm² for 1x19 and 133 kN/mm² for compacted strand from published"
            + " tables of rigging wire; 190 for rod, 57 for 7x7, 47.5 for 7x19 and breaking"
            + " stresses from memory. Cross-check: 1 mm over 2 m is about 5 % of the breaking load"
            + " of 1x19, common practice, no source",
        "Stainless wire that has been under load before, so that it has bedded in, measured from"
            + " quite slack, in one go, at one temperature. Read to half a millimetre.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Choice.of(
            "wire",
            "Construction",
            Arrays.stream(WireKind.values()).map(k -> new Option(k.word(), k.title())).toList()),
        Input.Number.of("diameter", "Diameter of the wire", MILLIMETRE, 5, 0.5, 60)
            .soundWithin(2, 16),
        Input.Number.of("length", "Measured length", METRES, 2, 0.1, 100).soundWithin(1, 20),
        Input.Number.of("stretch", "Stretch", MILLIMETRE, 3, 0, 1000).soundWithin(0.5, 50),
        Input.Number.of("breaking", "Breaking load", KILONEWTON, 20, 0.1, 5000)
            .orElse("estimated from construction and diameter"));
  }

  @Override
  public Answer work(CheckedInputs given) {
    WireKind wire = WireKind.of(given.word("wire"));
    double area = Orifice.areaMm2(given.number("diameter"));
    double strain = given.number("stretch") / (given.number("length") * KILO);
    double tension = wire.modulus() * area * strain / KILO;
    boolean estimated = given.maybe("breaking").isEmpty();
    double breaking = given.maybe("breaking").orElse(wire.breaking() * area / KILO);
    double share = tension / breaking * 100;
    return Answer.empty()
        .working(
            "F = "
                + Answer.say(wire.modulus() / KILO)
                + " kN/mm² × "
                + Answer.say(area)
                + " mm² × "
                + Answer.say(given.number("stretch"), MILLIMETRE)
                + " ÷ "
                + Answer.say(given.number("length"), METRES)
                + " = "
                + Answer.say(tension, KILONEWTON))
        .working(
            Answer.say(tension, KILONEWTON)
                + " ÷ "
                + Answer.say(breaking, KILONEWTON)
                + (estimated ? " (estimated)" : "")
                + " = "
                + Answer.say(share, HUNDREDTHS))
        .result("tension", "Tension", tension, KILONEWTON)
        .result("share", "Share of the breaking load", share, HUNDREDTHS)
        .result("breaking", "Breaking load", breaking, KILONEWTON)
        .warnIf(
            share > TOO_MUCH,
            "More than a quarter to a third of the breaking load is too much for a wire at rest:"
                + " slack off and measure again.")
        .warnIf(
            wire == WireKind.SEVEN_BY_19 || wire == WireKind.SEVEN_BY_7,
            "Published moduli of 7x7 and 7x19 differ by nearly a half. Take the figure as the least"
                + " the tension can be.");
  }
}
