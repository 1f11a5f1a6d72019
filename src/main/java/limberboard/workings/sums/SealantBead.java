package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.METRES;
import static limberboard.library.value.KnownUnit.MILLILITRE;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static limberboard.library.value.KnownUnit.PIECES;

import java.util.List;
import limberboard.workings.sums.Input.Option;

/** How much sealant a bead takes: geometry. */
final class SealantBead implements Sum {
  private static final double TRIANGLE = 0.5;
  private static final double HAIR = 1e-9;

  @Override
  public SumText text() {
    return new SumText(
        "sealant-bead",
        "Sealant for a bead",
        "How much sealant does a joint take, and how many cartridges is that?",
        "V = l · w · d · f · (1 + x): l, w and d the bead's length, width and depth, f = 1 for a"
            + " full joint and 1/2 for a fillet in a corner, x the share that is squeezed out and"
            + " wiped off; 1 m × 1 mm × 1 mm = 1 ml",
        "geometry; the tenth for waste is common practice, no source",
        "A bead of even section. Rough or hollow ground takes more.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Number.of("length", "Length of the bead", METRES, 1, 0.001, 1000),
        Input.Number.of("width", "Width", MILLIMETRE, 6, 0.1, 200).soundWithin(1, 30),
        Input.Number.of("depth", "Depth", MILLIMETRE, 6, 0.1, 200).soundWithin(1, 30),
        Input.Choice.of(
            "section",
            "Section",
            new Option("full", "full joint"),
            new Option("fillet", "fillet in a corner")),
        Input.Number.of("waste", "Squeezed out and wiped off", HUNDREDTHS, 10, 0, 200),
        Input.Number.of("cartridge", "A cartridge holds", MILLILITRE, 290, 1, 20_000));
  }

  @Override
  public Answer work(CheckedInputs given) {
    double length = given.number("length");
    double width = given.number("width");
    double depth = given.number("depth");
    double shape = given.word("section").equals("fillet") ? TRIANGLE : 1;
    double waste = given.number("waste");
    double aMetre = width * depth * shape * (1 + waste / 100);
    double volume = length * aMetre;
    double cartridge = given.number("cartridge");
    return Answer.empty()
        .working(
            "V = "
                + Answer.say(length, METRES)
                + " × "
                + Answer.say(width, MILLIMETRE)
                + " × "
                + Answer.say(depth, MILLIMETRE)
                + (shape < 1 ? " × 1/2" : "")
                + " × (1 + "
                + Answer.say(waste, HUNDREDTHS)
                + ") = "
                + Answer.say(volume, MILLILITRE))
        .working(
            Answer.say(volume, MILLILITRE)
                + " ÷ "
                + Answer.say(cartridge, MILLILITRE)
                + " = "
                + Answer.say(volume / cartridge)
                + " cartridges")
        .result("volume", "Sealant", volume, MILLILITRE)
        .result("cartridges", "Cartridges to buy", Math.ceil(volume / cartridge - HAIR), PIECES)
        .result("reach", "One cartridge reaches", cartridge / aMetre, METRES);
  }
}
