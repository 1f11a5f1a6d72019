package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.KILONEWTON;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static limberboard.library.value.KnownUnit.NEWTONS;
import static limberboard.library.value.KnownUnit.PIECES;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import limberboard.library.value.RopeConstruction;
import limberboard.library.value.RopeEnd;
import limberboard.workings.cordage.RopeStrength;
import limberboard.workings.sums.Input.Option;

/** The thinnest stocked rope for a load, with the losses of its end and of age. */
final class RopeDiameter implements Sum {
  private static final double KILO = 1000;
  private static final double LIGHT = 3;

  @Override
  public SumText text() {
    return new SumText(
        "rope-diameter",
        "Cordage diameter for a load",
        "How thick has a rope to be for a load, once its knot or splice and its age are counted?",
        "F = L · s / (e · a), d = √(F / c): L the load, s the safety factor, e what the end keeps"
            + " (knot 0.5, eye splice 0.9), a = 0.75 what age keeps, c the rope's strength in"
            + " N/mm²; the next stocked diameter",
        "c: EN 564 for braided polyester (from memory), below BS 4928 for three-strand, the lower"
            + " end of what shops give for HMPE (from memory); splice: OCIMF Mooring Equipment"
            + " Guidelines; knot: Šimon, Dekýš and Palček, Acta Physica Polonica A 138(3), 2020,"
            + " taken low; safety and age: common practice, no source",
        "Running rigging and ties that can be seen and renewed. Not for lifting people or goods,"
            + " for towing, or for shock loads. The label's breaking load counts before this one.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Number.of("load", "Load", NEWTONS, 1000, 1, 200_000).soundWithin(20, 50_000),
        Input.Choice.of(
            "rope",
            "Construction",
            Arrays.stream(RopeConstruction.values())
                .map(each -> new Option(each.word(), each.title()))
                .toList()),
        Input.Choice.of(
                "end",
                "Weakest end",
                Arrays.stream(RopeEnd.values())
                    .map(each -> new Option(each.word(), each.spoken()))
                    .toList())
            .usually(RopeEnd.KNOT.word()),
        Input.Number.of("safety", "Safety factor", PIECES, 3, 1, 20));
  }

  @Override
  public Answer work(CheckedInputs given) {
    RopeConstruction rope = RopeWords.rope(given);
    RopeEnd end = RopeWords.end(given);
    double safety = given.number("safety");
    double needed = RopeStrength.needed(given.number("load"), end) * safety / RopeStrength.SAFETY;
    double exact = Math.sqrt(needed / RopeStrength.breaking(rope, 1));
    OptionalDouble stocked = RopeStrength.thinnest(rope, needed);
    Answer answer =
        Answer.empty()
            .working(
                "F = "
                    + Answer.say(given.number("load"), NEWTONS)
                    + " × "
                    + Answer.say(safety)
                    + " ÷ ("
                    + Answer.say(RopeStrength.keeps(end))
                    + " × "
                    + Answer.say(RopeStrength.AGE_KEEPS)
                    + ") = "
                    + Answer.say(needed / KILO, KILONEWTON))
            .working(
                "d = √("
                    + Answer.say(needed / KILO, KILONEWTON)
                    + " ÷ "
                    + Answer.say(RopeStrength.breaking(rope, 1))
                    + " N/mm²) = "
                    + Answer.say(exact, MILLIMETRE));
    return sized(answer, rope, stocked)
        .result("needed", "A new rope has to break at", needed / KILO, KILONEWTON)
        .result("exact", "Diameter before rounding up", exact, MILLIMETRE)
        .warnIf(stocked.isEmpty(), "No stocked rope of this construction is thick enough.")
        .warnIf(
            safety < LIGHT,
            "With a safety factor below 3 a rope is chosen for racing, and renewed accordingly.")
        .warnIf(
            rope == RopeConstruction.HMPE_PLAIN && end == RopeEnd.KNOT
                || rope == RopeConstruction.HMPE_CORE && end == RopeEnd.KNOT,
            "Knots slip in HMPE and can keep less than half of its strength: splice it.");
  }

  private static Answer sized(Answer answer, RopeConstruction rope, OptionalDouble stocked) {
    return stocked.isEmpty()
        ? answer
        : answer
            .result("diameter", "Stocked diameter", stocked.getAsDouble(), MILLIMETRE)
            .result(
                "breaking",
                "It breaks at about",
                RopeStrength.breaking(rope, stocked.getAsDouble()) / KILO,
                KILONEWTON);
  }
}
