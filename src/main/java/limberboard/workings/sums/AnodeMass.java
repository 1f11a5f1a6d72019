package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.AMPERES;
import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.KILOGRAM;
import static limberboard.library.value.KnownUnit.MILLIAMPERES_ON_SQUARE_METRE;
import static limberboard.library.value.KnownUnit.SQUARE_METRES;
import static limberboard.library.value.KnownUnit.YEARS;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import limberboard.boat.Boat;
import limberboard.library.value.Water;
import limberboard.workings.sums.Input.Option;

/** Mass and life of sacrificial anodes: DNV-RP-B401. */
final class AnodeMass implements Sum {
  private static final double HOURS_A_YEAR = 8760;
  private static final double MILLI = 1000;
  private static final double TWO_SEASONS = 2;

  @Override
  public SumText text() {
    return new SumText(
        "anode-mass",
        "Anode mass and life",
        "How much anode does bare metal under water need, and how long does what is fitted last?",
        "I = A · b · i and m = I · t · 8760 h / (u · ε): A the area under water, b the share of it"
            + " that is bare, i the mean current density, t the years, u the share of an anode that"
            + " can be used up, ε what a kilogram gives; life t = m · u · ε / (I · 8760 h)",
        "DNV-RP-B401, Cathodic protection design: the formula of its section on anode mass, 2000"
            + " Ah/kg for aluminium and 780 Ah/kg for zinc in sea water, use 0.90 stand-off, 0.85"
            + " long and flush, 0.80 short and flush, 100 mA/m² for bare steel in temperate water;"
            + " magnesium 1100 Ah/kg, half of Faraday's 2205 Ah/kg, from memory",
        "The standard is written for steel structures offshore, at rest, for many years. On a small"
            + " boat it gives the order of size: a moving boat, a warm harbour or a stray current"
            + " uses up more, good paint far less. Whether the anodes can also give the current is"
            + " not reckoned; a look at them at half time decides.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Choice.of(
            "water",
            "Water",
            new Option("salt", "salt"),
            new Option("brackish", "brackish"),
            new Option("fresh", "fresh")),
        Input.Choice.of(
            "alloy",
            "Alloy",
            new Option("aluminium", "aluminium"),
            new Option("zinc", "zinc"),
            new Option("magnesium", "magnesium")),
        Input.Number.of("area", "Metal under water", SQUARE_METRES, 0.5, 0.001, 1e5)
            .soundWithin(0.01, 100),
        Input.Number.of("bare", "Share of it that is bare", HUNDREDTHS, 100, 0.1, 100),
        Input.Number.of(
                "density", "Mean current density", MILLIAMPERES_ON_SQUARE_METRE, 100, 1, 2000)
            .soundWithin(10, 400),
        Input.Number.of("life", "Wanted life", YEARS, 2, 0.1, 50).soundWithin(0.5, 30),
        Input.Choice.of(
            "shape",
            "Shape of the anode",
            new Option("flush-short", "short and flush, or a ring"),
            new Option("flush-long", "long and flush"),
            new Option("stand-off", "slender, standing off")),
        Input.Number.of("fitted", "Mass that is fitted", KILOGRAM, 1, 0.01, 1e5)
            .orElse("life of what is fitted is not reckoned"));
  }

  @Override
  public Map<String, Value> defaultsFor(Boat boat) {
    return Map.of(
        "water",
        Value.of(boat.water().word()),
        "alloy",
        Value.of(AnodeCapacity.usualIn(boat.water()).word()));
  }

  @Override
  public Answer work(CheckedInputs given) {
    AnodeCapacity alloy = AnodeCapacity.of(given.word("alloy"));
    Water water = Water.valueOf(given.word("water").toUpperCase(Locale.ROOT));
    double bare = given.number("area") * given.number("bare") / 100;
    double current = bare * given.number("density") / MILLI;
    double use = use(given.word("shape"));
    double aKilogram = use * alloy.ampereHoursAKilogram();
    double mass = current * given.number("life") * HOURS_A_YEAR / aKilogram;
    Answer answer =
        Answer.empty()
            .working(
                "I = "
                    + Answer.say(bare, SQUARE_METRES)
                    + " × "
                    + Answer.say(given.number("density"), MILLIAMPERES_ON_SQUARE_METRE)
                    + " = "
                    + Answer.say(current, AMPERES))
            .working(
                "m = "
                    + Answer.say(current, AMPERES)
                    + " × "
                    + Answer.say(given.number("life"), YEARS)
                    + " × 8760 h ÷ ("
                    + Answer.say(use)
                    + " × "
                    + Answer.say(alloy.ampereHoursAKilogram())
                    + " Ah/kg) = "
                    + Answer.say(mass, KILOGRAM))
            .result("mass", "Anode needed, net", mass, KILOGRAM)
            .result("current", "Mean current", current, AMPERES);
    return warned(lasting(answer, given.maybe("fitted"), current, aKilogram), alloy, water);
  }

  private static Answer lasting(
      Answer answer, OptionalDouble fitted, double current, double aKilogram) {
    if (fitted.isEmpty()) {
      return answer;
    }
    double life = fitted.getAsDouble() * aKilogram / (current * HOURS_A_YEAR);
    return answer
        .working(
            "t = "
                + Answer.say(fitted.getAsDouble(), KILOGRAM)
                + " × "
                + Answer.say(aKilogram)
                + " Ah/kg ÷ ("
                + Answer.say(current, AMPERES)
                + " × 8760 h a year) = "
                + Answer.say(life, YEARS))
        .result("life", "What is fitted lasts", life, YEARS)
        .warnIf(
            life > TWO_SEASONS,
            "Whatever life is reckoned, an anode is renewed when half of it is gone and after two"
                + " seasons at most: crust, paint or a bad joint end it sooner than its metal.");
  }

  private static Answer warned(Answer answer, AnodeCapacity alloy, Water water) {
    return answer
        .warnIf(alloy.against(water).isPresent(), alloy.against(water).orElse(""))
        .warnIf(
            water == Water.FRESH,
            "The current densities are for sea water. Fresh water conducts so badly that an anode"
                + " guards only what is near it: fit several small ones rather than one large.");
  }

  private static double use(String shape) {
    return switch (shape) {
      case "flush-long" -> 0.85;
      case "stand-off" -> 0.90;
      default -> 0.80;
    };
  }
}
