package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.LITRES_A_MINUTE;
import static limberboard.library.value.KnownUnit.METRES;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static limberboard.library.value.KnownUnit.PIECES;

import java.util.List;
import limberboard.workings.sums.Input.Option;

/** What a centrifugal bilge pump lifts through its hose, and which hole it keeps up with. */
final class BilgePump implements Sum {

  @Override
  public SumText text() {
    return new SumText(
        "bilge-pump",
        "What a bilge pump keeps up with",
        "How much does the pump really lift through its hose, and which hole does it keep up with?",
        "H₀ · (1 − (Q/Q₀)²) = z + (f · l/d + k) · v²/(2 · g): Q₀ the flow without any lift, H₀ the"
            + " lift at which nothing flows, z the lift, l and d the hose's length and bore, f the"
            + " friction factor, k = 1.5 + 0.9 a bend for inlet, outlet and bends, v the speed in"
            + " the hose",
        "Darcy and Weisbach's head loss with the friction factor of Swamee and Jain (1976), 64/Re"
            + " below Re = 2300; loss figures of hydraulics handbooks (from memory); the pump's"
            + " curve as a parabola between the two figures on its plate, common practice, no"
            + " source",
        "Electric centrifugal pumps with a clean strainer, at the voltage of their plate. A low"
            + " battery, a thin cable or a clogged strainer halves it. A hand pump has no such"
            + " curve: count its strokes.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Number.of(
                "rated", "Flow on the plate, without lift", LITRES_A_MINUTE, 30, 0.1, 10_000)
            .soundWithin(5, 500),
        Input.Number.of("most-lift", "Lift at which nothing flows", METRES, 3, 0.1, 50)
            .soundWithin(1, 10),
        Input.Number.of("lift", "Lift: bilge to highest point of the hose", METRES, 1.2, 0, 50)
            .soundWithin(0, 5),
        Input.Number.of("bore", "Bore of the hose", MILLIMETRE, 19, 3, 300).soundWithin(12, 60),
        Input.Number.of("hose", "Length of the hose", METRES, 3, 0.1, 500).soundWithin(0.2, 15),
        Input.Choice.of(
            "wall",
            "Inside of the hose",
            new Option("smooth", "smooth"),
            new Option("ribbed", "ribbed")),
        Input.Number.of("bends", "Bends and valves", PIECES, 3, 0, 50),
        Input.Number.of(
                "depth", "Depth of the hole below the water outside", METRES, 0.5, 0.001, 100)
            .soundWithin(0.02, 10));
  }

  @Override
  public Answer work(CheckedInputs given) {
    double rated = given.number("rated");
    double lift = given.number("lift");
    HoseLoss hose =
        new HoseLoss(
            given.number("bore"),
            given.number("hose"),
            given.word("wall").equals("ribbed"),
            given.number("bends"));
    double flow = hose.flow(rated, given.number("most-lift"), lift);
    double hole = Orifice.diameterMm(Orifice.coefficient("sharp"), flow, given.number("depth"));
    return Answer.empty()
        .working("without lift and hose: " + Answer.say(rated, LITRES_A_MINUTE))
        .working(
            "lift "
                + Answer.say(lift, METRES)
                + " and loss in the hose "
                + Answer.say(hose.headM(flow), METRES)
                + " leave "
                + Answer.say(flow, LITRES_A_MINUTE))
        .working(
            "a sharp-edged hole of "
                + Answer.say(hole, MILLIMETRE)
                + " at "
                + Answer.say(given.number("depth"), METRES)
                + " lets in as much")
        .result("flow", "The pump lifts", flow, LITRES_A_MINUTE)
        .result("share", "Share of its plate", flow / rated * 100, HUNDREDTHS)
        .result("hole", "Keeps up with a hole of", hole, MILLIMETRE)
        .warnIf(
            flow <= 0, "The lift is more than the pump can reach: nothing comes out of the hose.")
        .warnIf(
            flow > 0,
            "Never count on the pump alone: close the leak first. A hole the size of a hose tail"
                + " is more than most small boats' pumps.");
  }
}
