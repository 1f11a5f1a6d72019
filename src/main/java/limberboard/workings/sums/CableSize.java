package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.AMPERES;
import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.METRES;
import static limberboard.library.value.KnownUnit.SQUARE_MILLIMETRE;
import static limberboard.library.value.KnownUnit.VOLTS;

import java.util.List;
import java.util.OptionalDouble;
import limberboard.workings.sums.Input.Option;

/** Cable size for a run and load: ISO 10133 and ISO 13297. */
final class CableSize implements Sum {
  private static final double COPPER = 0.0164;
  private static final double CRITICAL = 0.03;
  private static final double OTHER = 0.10;

  @Override
  public SumText text() {
    return new SumText(
        "cable-size",
        "Cable size for a run and load",
        "How thick must a cable be so that enough voltage arrives and it does not get hot?",
        "S = 0.0164 · I · L / E: S the cross-section in mm², I the current in A, L the length of"
            + " the conductor there and back in m, E the voltage that may be lost; then the next"
            + " standard cross-section, and one that may carry the current",
        "ISO 10133 and ISO 13297, small craft, direct current below 50 V: 3 % for panel feeders,"
            + " navigation lights, bilge pumps and blowers, 10 % for the rest, no conductor below 1"
            + " mm²; formula and table of currents from memory",
        "Stranded copper. 0.0164 is cold copper; a cable at its full current is warm and loses up"
            + " to a quarter more. A fuse that suits the cable sits at its beginning. Starter and"
            + " windlass cables: follow the maker of the machine.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Number.of("current", "Current", AMPERES, 10, 0.001, 5000).soundWithin(0.1, 400),
        Input.Number.of("run", "Run from source to load, one way", METRES, 5, 0.05, 1000)
            .soundWithin(0.2, 60),
        Input.Number.of("voltage", "Voltage", VOLTS, 12, 1, 1000).soundWithin(6, 50),
        Input.Choice.of(
            "load",
            "Load",
            new Option("other", "one that may lose 10 %"),
            new Option("critical", "one that may lose 3 %: lights, pumps, blowers, panel")),
        Input.Choice.of(
            "insulation",
            "Insulation stands",
            new Option("to-70", "70 °C"),
            new Option("to-60", "60 °C, or not known"),
            new Option("to-85", "85 to 90 °C"),
            new Option("to-105", "105 °C")),
        Input.Choice.of(
            "place",
            "Place",
            new Option("cabin", "outside the engine space"),
            new Option("engine-space", "through the engine space")),
        Input.Choice.of(
            "bundle",
            "Loaded conductors in the bundle",
            new Option("to-3", "up to 3"),
            new Option("to-6", "4 to 6"),
            new Option("to-24", "7 to 24"),
            new Option("more", "25 or more")));
  }

  @Override
  public Answer work(CheckedInputs given) {
    double current = given.number("current");
    double wire = 2 * given.number("run");
    double allowed = given.word("load").equals("critical") ? CRITICAL : OTHER;
    double volts = given.number("voltage") * allowed;
    double section = COPPER * current * wire / volts;
    String insulation = given.word("insulation");
    double factor =
        (given.word("place").equals("cabin") ? 1 : CableTable.inEngineSpace(insulation))
            * CableTable.inBundle(given.word("bundle"));
    OptionalDouble byDrop = CableTable.next(section);
    OptionalDouble byHeat = CableTable.carrying(current, insulation, factor);
    Answer answer =
        Answer.empty()
            .working(
                "S = 0.0164 × "
                    + Answer.say(current, AMPERES)
                    + " × "
                    + Answer.say(wire, METRES)
                    + " ÷ "
                    + Answer.say(volts, VOLTS)
                    + " = "
                    + Answer.say(section, SQUARE_MILLIMETRE))
            .result("computed", "By the voltage drop", section, SQUARE_MILLIMETRE);
    return byDrop.isPresent() && byHeat.isPresent()
        ? chosen(answer, given, byDrop.getAsDouble(), byHeat.getAsDouble())
        : beyond(answer, factor);
  }

  private static Answer chosen(Answer answer, CheckedInputs given, double byDrop, double byHeat) {
    double size = Math.max(byDrop, byHeat);
    double lost = COPPER * given.number("current") * 2 * given.number("run") / size;
    return answer
        .working(
            "next standard size by the drop "
                + Answer.say(byDrop, SQUARE_MILLIMETRE)
                + ", by the current "
                + Answer.say(byHeat, SQUARE_MILLIMETRE))
        .working(
            "with "
                + Answer.say(size, SQUARE_MILLIMETRE)
                + " the cable loses "
                + Answer.say(lost, VOLTS))
        .result("size", "Cable", size, SQUARE_MILLIMETRE)
        .result("lost", "Voltage lost", lost, VOLTS)
        .result("drop", "That is", lost / given.number("voltage") * 100, HUNDREDTHS);
  }

  private static Answer beyond(Answer answer, double factor) {
    return factor == 0
        ? answer.warnIf(true, "A 60 °C insulation is not allowed in an engine space.")
        : answer.warnIf(
            true,
            "No single cable of the table up to 150 mm² will do: move the source nearer, use a"
                + " higher voltage, or ask an electrician.");
  }
}
