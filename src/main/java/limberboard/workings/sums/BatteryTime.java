package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.AMPERES;
import static limberboard.library.value.KnownUnit.AMPERE_HOURS;
import static limberboard.library.value.KnownUnit.DEGREES_CELSIUS;
import static limberboard.library.value.KnownUnit.HOURS;
import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.PIECES;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import limberboard.boat.Boat;
import limberboard.workings.sums.Input.Option;

/** How long a battery runs a load: Peukert's law. */
final class BatteryTime implements Sum {
  private static final double SLOWEST = 5;

  @Override
  public SumText text() {
    return new SumText(
        "battery-time",
        "How long a battery lasts",
        "For how many hours does the battery carry a steady load before it should be charged?",
        "t = u · H · (c · C / (I · H))^k: C the rated capacity, H the hours it is rated for, I the"
            + " load, k Peukert's exponent, c what cold and age leave of the capacity, u the share"
            + " that may be taken out",
        "W. Peukert (1897) in the form with rated hours; exponents from published ranges: flooded"
            + " 1.25, gel 1.15, AGM 1.10, lithium 1.03 (from memory); share to use 50 % for lead,"
            + " 80 % for lithium, and 0.8 % (lithium 0.4 %) of capacity lost a degree below 25 °C,"
            + " common practice, no source",
        "A steady load between a fifth of the rated current and the whole capacity in an hour. With"
            + " weaker loads the law promises too much; loads that come and go let the battery"
            + " recover.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Choice.of(
            "kind",
            "Kind of battery",
            Arrays.stream(BatteryKind.values()).map(k -> new Option(k.word(), k.title())).toList()),
        Input.Number.of("capacity", "Rated capacity", AMPERE_HOURS, 100, 0.1, 10_000)
            .soundWithin(1, 2000),
        Input.Number.of("rated-hours", "Rated for", HOURS, 20, 0.1, 200).soundWithin(5, 100),
        Input.Number.of("load", "Load", AMPERES, 4, 0.001, 5000),
        Input.Number.of("temperature", "Temperature", DEGREES_CELSIUS, 15, -40, 60)
            .soundWithin(-10, 45),
        Input.Number.of("health", "What age has left of it", HUNDREDTHS, 100, 1, 120),
        Input.Number.of("usable", "Share to use", HUNDREDTHS, 50, 1, 100)
            .orElse("by the kind of battery"),
        Input.Number.of("peukert", "Peukert's exponent", PIECES, 1.1, 1, 2)
            .orElse("by the kind of battery"));
  }

  @Override
  public Map<String, Value> defaultsFor(Boat boat) {
    return Arrays.stream(BatteryKind.values())
        .map(BatteryKind::word)
        .filter(word -> boat.has("battery-" + word))
        .findFirst()
        .map(word -> Map.of("kind", Value.of(word)))
        .orElse(Map.of());
  }

  @Override
  public Answer work(CheckedInputs given) {
    BatteryKind kind = BatteryKind.of(given.word("kind"));
    double load = given.number("load");
    double hours = given.number("rated-hours");
    double celsius = given.number("temperature");
    double left = kind.leftAt(celsius) * given.number("health") / 100;
    double capacity = given.number("capacity") * left;
    double usable = given.maybe("usable").orElse(kind.usable());
    double k = given.maybe("peukert").orElse(kind.peukert());
    double full = hours * Math.pow(capacity / (load * hours), k);
    double time = full * usable / 100;
    return Answer.empty()
        .working(
            "c · C = "
                + Answer.say(left)
                + " × "
                + Answer.say(given.number("capacity"), AMPERE_HOURS)
                + " = "
                + Answer.say(capacity, AMPERE_HOURS))
        .working(
            "to quite empty: "
                + Answer.say(hours, HOURS)
                + " × ("
                + Answer.say(capacity, AMPERE_HOURS)
                + " ÷ ("
                + Answer.say(load, AMPERES)
                + " × "
                + Answer.say(hours, HOURS)
                + "))^"
                + Answer.say(k)
                + " = "
                + Answer.say(full, HOURS))
        .working("× " + Answer.say(usable, HUNDREDTHS) + " = " + Answer.say(time, HOURS))
        .result("time", "Lasts", time, HOURS)
        .result("taken", "Takes out", time * load, AMPERE_HOURS)
        .warnIf(
            load * hours * SLOWEST < given.number("capacity"),
            "So weak a load lies outside Peukert's law: it promises too much, and the battery's own"
                + " discharge counts. Take capacity × share ÷ load as the most.")
        .warnIf(
            load > given.number("capacity"),
            "So strong a load lies outside Peukert's law, and may be more than the battery or its"
                + " guard allows.")
        .warnIf(
            kind == BatteryKind.LITHIUM && celsius < 0,
            "A lithium battery may be used below 0 °C but must not be charged.");
  }
}
