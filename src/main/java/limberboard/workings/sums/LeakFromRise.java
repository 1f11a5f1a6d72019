package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.HOURS;
import static limberboard.library.value.KnownUnit.LITRES;
import static limberboard.library.value.KnownUnit.LITRES_AN_HOUR;
import static limberboard.library.value.KnownUnit.METRES;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static limberboard.library.value.KnownUnit.SQUARE_METRES;

import java.util.List;

/** How large a leak is, from a measured rise of the bilge water: volume, then Torricelli. */
final class LeakFromRise implements Sum {
  private static final int MINUTES_AN_HOUR = 60;
  private static final int HOURS_A_DAY = 24;
  private static final double DRIPPING_MM = 0.5;

  @Override
  public SumText text() {
    return new SumText(
        "leak-from-rise",
        "Size of a leak from the rise of the water",
        "What does a measured rise of the bilge water say about the leak?",
        "Q = A · r / t and d = √(4 · Q / (π · C · √(2 · g · h))): A the surface of the water in the"
            + " bilge, r its rise, t the time, h the depth of the leak below the water outside, C"
            + " the discharge coefficient, d the diameter of one round hole that lets in as much;"
            + " 1 m² × 1 mm = 1 l",
        "geometry and Torricelli's law, with the coefficients of hydraulics handbooks (sharp edge"
            + " 0.60, short pipe 0.82, rounded edge 0.98, from memory)",
        "Bilge sides that are upright between the two marks, and water of which none is pumped out"
            + " or comes in by another way. Real leaks are cracks and slack seals rather than round"
            + " holes: the hole says how large the leak is in all, not what it looks like.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Number.of(
                "surface", "Surface of the water in the bilge", SQUARE_METRES, 0.3, 1e-4, 100)
            .soundWithin(0.005, 20),
        Input.Number.of("rise", "Rise between two marks", MILLIMETRE, 10, 0.01, 5000)
            .soundWithin(2, 500),
        Input.Number.of("time", "Time between them", HOURS, 1, 1e-3, 10_000).soundWithin(0.01, 200),
        Input.Number.of(
                "depth",
                "Likely depth of the leak below the water outside",
                METRES,
                0.3,
                0.001,
                100)
            .soundWithin(0.02, 10),
        Orifice.edge());
  }

  @Override
  public Answer work(CheckedInputs given) {
    double litres = given.number("surface") * given.number("rise");
    double hourly = litres / given.number("time");
    double depth = given.number("depth");
    double c = Orifice.coefficient(given.word("edge"));
    double hole = Orifice.diameterMm(c, hourly / MINUTES_AN_HOUR, depth);
    return Answer.empty()
        .working(
            "V = "
                + Answer.say(given.number("surface"), SQUARE_METRES)
                + " × "
                + Answer.say(given.number("rise"), MILLIMETRE)
                + " = "
                + Answer.say(litres, LITRES))
        .working(
            "Q = "
                + Answer.say(litres, LITRES)
                + " ÷ "
                + Answer.say(given.number("time"), HOURS)
                + " = "
                + Answer.say(hourly, LITRES_AN_HOUR))
        .working(
            "d = "
                + Answer.say(hole, MILLIMETRE)
                + " lets that in at "
                + Answer.say(depth, METRES)
                + ", with C = "
                + Answer.say(c))
        .result("flow", "Comes in", hourly, LITRES_AN_HOUR)
        .result("day", "In a day", hourly * HOURS_A_DAY, LITRES)
        .result("hole", "As one round hole", hole, MILLIMETRE)
        .warnIf(
            hole < DRIPPING_MM,
            "So small a leak drips or seeps: friction in it counts more than the formula knows, and"
                + " the true gap is larger. Rain and condensation bring as much; taste the water"
                + " first.");
  }
}
