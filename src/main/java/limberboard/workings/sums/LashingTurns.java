package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.KILONEWTON;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static limberboard.library.value.KnownUnit.NEWTONS;
import static limberboard.library.value.KnownUnit.PIECES;

import java.util.List;
import limberboard.library.value.RopeConstruction;
import limberboard.workings.cordage.Lashing;
import limberboard.workings.cordage.RopeStrength;

/** Turns of a lashing for a load. */
final class LashingTurns implements Sum {
  private static final double KILO = 1000;
  private static final int MANY = 12;

  @Override
  public SumText text() {
    return new SumText(
        "lashing-turns",
        "Lashing turns for a load",
        "How many turns of thin cord does a lashing take?",
        "n = L · s / (2 · c · d² · 0.7 · 0.5 · 0.75), rounded up, three at least: L the load, s = 3"
            + " the safety factor, 2 parts in each turn, c the cord's strength in N/mm², d its"
            + " diameter; 0.7 since the parts do not share evenly, 0.5 for the knot, 0.75 for age",
        "Parts of a tackle, with the strengths of the cordage sum; shares and factors are common"
            + " practice, no source",
        "Turns laid side by side and each drawn tight, round smooth rings or pins thicker than"
            + " twice the cord. Look at it often: a lashing that has slackened carries on few"
            + " parts.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Number.of("load", "Load", NEWTONS, 2000, 0, 200_000).soundWithin(0, 30_000),
        Input.Number.of("diameter", "Diameter of the cord", MILLIMETRE, 1.5, 0.5, 20)
            .soundWithin(1, 6),
        Input.Choice.of(
            "rope",
            "Construction",
            new Input.Option(
                RopeConstruction.HMPE_PLAIN.word(), RopeConstruction.HMPE_PLAIN.title()),
            new Input.Option(
                RopeConstruction.POLYESTER_BRAID.word(),
                RopeConstruction.POLYESTER_BRAID.title())));
  }

  @Override
  public Answer work(CheckedInputs given) {
    double breaking = RopeStrength.breaking(RopeWords.rope(given), given.number("diameter"));
    double load = given.number("load");
    int turns = Lashing.turns(load, breaking);
    double safe = Lashing.holds(turns, breaking) / RopeStrength.SAFETY;
    return Answer.empty()
        .working("One part breaks at " + Answer.say(breaking / KILO, KILONEWTON))
        .working(
            "n = "
                + Answer.say(load, NEWTONS)
                + " × 3 ÷ (2 × "
                + Answer.say(breaking, NEWTONS)
                + " × 0.7 × 0.5 × 0.75) = "
                + Answer.say(load * RopeStrength.SAFETY / Lashing.holds(1, breaking)))
        .result("turns", "Turns", turns, PIECES)
        .result("carries", "So many turns carry", safe / KILO, KILONEWTON)
        .warnIf(turns > MANY, "More than twelve turns do not pull evenly: take thicker cord.");
  }
}
