package limberboard.upkeep;

import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.library.value.Interval;

/**
 * How often work is done on one boat: the page's interval with the boat's factors applied.
 *
 * @param every calendar period
 * @param seasons seasons afloat, in steps of a quarter, at least a quarter
 * @param engineHours hours of the engine
 * @param uses counted uses by name
 * @param changes what shortened or lengthened it, in words: {@code halved: used for charter}
 */
record BoatInterval(
    Optional<Period> every,
    OptionalDouble seasons,
    OptionalDouble engineHours,
    Map<String, Double> uses,
    List<String> changes) {
  private static final double QUARTERS = 4;

  /** The interval for a boat. */
  static BoatInterval of(Interval interval, Fitting fitting) {
    double times = 1;
    List<String> changes = new ArrayList<>();
    for (Interval.Factor factor : interval.factors()) {
      Fit fit = fitting.judge(factor.when());
      if (fit.fits() && factor.times() > 0) {
        times *= factor.times();
        changes.add(factor.change() + (fit.reason().isEmpty() ? "" : ": " + fit.reason()));
      }
    }
    double all = times;
    Map<String, Double> uses = new LinkedHashMap<>();
    interval.uses().forEach((use, count) -> uses.put(use, count * all));
    return new BoatInterval(
        interval.every().map(period -> Periods.scaled(period, all)),
        interval.seasons().isPresent()
            ? OptionalDouble.of(quarters(interval.seasons().getAsInt() * all))
            : OptionalDouble.empty(),
        interval.engineHours().isPresent()
            ? OptionalDouble.of(interval.engineHours().getAsDouble() * all)
            : OptionalDouble.empty(),
        uses,
        List.copyOf(changes));
  }

  private static double quarters(double seasons) {
    return Math.max(1, Math.round(seasons * QUARTERS)) / QUARTERS;
  }
}
