package limberboard.upkeep;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import limberboard.boat.HourMeter;
import limberboard.boat.LogEntry;

/**
 * All that is counted on a boat.
 *
 * @param hours the engine's hours
 * @param uses counted uses, by name
 */
record Meters(Meter hours, Map<String, Meter> uses) {

  /** Reads the meters off a log that stands in the order of its dates. */
  static Meters of(List<LogEntry> log, Seasons seasons) {
    Map<LocalDate, Double> hours = new TreeMap<>();
    HourMeter.of(log).readings().forEach(reading -> hours.put(reading.date(), reading.hours()));
    Map<String, Meter> uses = new HashMap<>();
    counts(log).forEach((use, counts) -> uses.put(use, new Meter(counts, seasons)));
    return new Meters(new Meter(hours, seasons), Map.copyOf(uses));
  }

  /** The meter of a use; one that was never read where nothing was counted. */
  Meter use(String name, Seasons seasons) {
    return uses.getOrDefault(name, new Meter(Map.of(), seasons));
  }

  private static Map<String, Map<LocalDate, Double>> counts(List<LogEntry> log) {
    Map<String, Map<LocalDate, Double>> all = new HashMap<>();
    Map<String, Double> totals = new HashMap<>();
    LocalDate before = log.isEmpty() ? LocalDate.MIN : log.get(0).date();
    for (LogEntry entry : log) {
      for (Map.Entry<String, Integer> use : entry.uses().entrySet()) {
        Map<LocalDate, Double> counts = all.get(use.getKey());
        if (counts == null) {
          counts = new TreeMap<>(Map.of(before, 0.0));
          all.put(use.getKey(), counts);
        }
        double total = totals.merge(use.getKey(), use.getValue().doubleValue(), Double::sum);
        counts.put(entry.date(), total);
      }
      before = entry.date();
    }
    return all;
  }
}
