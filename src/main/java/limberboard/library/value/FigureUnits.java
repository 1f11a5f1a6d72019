package limberboard.library.value;

import static javax.measure.MetricPrefix.MILLI;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * The units that figures are written in: those of quantities, and what sentences have besides, also
 * written out.
 */
final class FigureUnits {
  private static final Map<String, Unit<?>> UNITS = new LinkedHashMap<>();

  static {
    for (KnownUnit unit : KnownUnit.values()) {
      if (unit != KnownUnit.PIECES) {
        put(unit.unit(), unit.symbol(), unit.symbol().replace('²', '2'));
      }
    }
    put(KnownUnit.NEWTON_METRES.unit(), "N·m");
    put(Units.SECOND, "s", "second", "seconds");
    put(Units.MINUTE, "minute", "minutes");
    put(Units.HOUR, "hour", "hours");
    put(Units.DAY, "day", "days");
    put(Units.WEEK, "week", "weeks");
    put(Units.MONTH, "month", "months");
    put(Units.YEAR, "year");
    put(MILLI(Units.AMPERE), "mA");
    put(MILLI(Units.VOLT), "mV");
    put(MILLI(KnownUnit.BARS.unit()), "mbar");
    put(Units.GRAM.divide(Units.LITRE), "g/l", "g a litre");
    put(MILLI(Units.LITRE).divide(Units.LITRE), "ml/l", "ml a litre");
    put(AbstractUnit.ONE.divide(Units.MINUTE), "rev/min");
  }

  private FigureUnits() {}

  private static void put(Unit<?> unit, String... names) {
    for (String name : names) {
      UNITS.put(name, unit);
    }
  }

  /** The unit of this name. */
  static Optional<Unit<?>> of(String name) {
    return Optional.ofNullable(UNITS.get(name));
  }

  /** The names of all, for whoever has written another. */
  static String names() {
    return String.join(", ", UNITS.keySet());
  }
}
