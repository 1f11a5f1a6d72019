package limberboard.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Something counted over time, such as engine hours: known where it was read, between readings
 * spread over the days afloat, and before and after them estimated from the rate of the last
 * seasons. It never falls. Immutable.
 */
final class Meter {
  /** How many seasons back the rate is taken from. */
  private static final double RATE_FROM_SEASONS = 3;

  /** A shorter time afloat says nothing about a season. */
  private static final double LEAST_SEASONS = 0.1;

  private static final double HAIR = 1e-9;

  private final NavigableMap<LocalDate, Double> readings = new TreeMap<>();
  private final Seasons seasons;
  private final OptionalDouble perSeason;

  /**
   * A meter.
   *
   * @param readings day to what had been counted by then; never falling
   */
  Meter(Map<LocalDate, Double> readings, Seasons seasons) {
    this.readings.putAll(readings);
    this.seasons = seasons;
    this.perSeason = rate();
  }

  /** Whether it has been read at all. */
  boolean isRead() {
    return !readings.isEmpty();
  }

  /** How much a season adds, where at least two readings tell. */
  OptionalDouble perSeason() {
    return perSeason;
  }

  /** What had, or will have, been counted by a day; 0 when it was never read. */
  double at(LocalDate day) {
    if (!isRead()) {
      return 0;
    }
    Map.Entry<LocalDate, Double> before = readings.floorEntry(day);
    Map.Entry<LocalDate, Double> after = readings.ceilingEntry(day);
    if (before == null) {
      return Math.max(0, after.getValue() - estimated(day, after.getKey()));
    }
    return after == null
        ? before.getValue() + estimated(before.getKey(), day)
        : between(before, after, day);
  }

  /** Whether the count on this day is estimated from the rate and not framed by readings. */
  boolean isEstimated(LocalDate day) {
    return isRead() && (day.isAfter(readings.lastKey()) || day.isBefore(readings.firstKey()));
  }

  /** The last day on which no more than this has been counted; empty when there is no telling. */
  Optional<LocalDate> last(double count) {
    if (!isRead()) {
      return Optional.empty();
    }
    Map.Entry<LocalDate, Double> reached = null;
    for (Map.Entry<LocalDate, Double> reading : readings.entrySet()) {
      if (reading.getValue() > count + HAIR) {
        return Optional.of(
            reached == null ? reading.getKey() : lastBetween(reached, reading, count));
      }
      reached = reading;
    }
    return after(reached, count);
  }

  private Optional<LocalDate> after(Map.Entry<LocalDate, Double> last, double count) {
    if (perSeason.isEmpty() || perSeason.getAsDouble() <= 0) {
      return Optional.empty();
    }
    double more = (count - last.getValue()) / perSeason.getAsDouble();
    LocalDate day = seasons.last(seasons.gone(last.getKey()) + more);
    return Optional.of(day.isBefore(last.getKey()) ? last.getKey() : day);
  }

  private LocalDate lastBetween(
      Map.Entry<LocalDate, Double> before, Map.Entry<LocalDate, Double> after, double count) {
    double from = seasons.gone(before.getKey());
    double to = seasons.gone(after.getKey());
    double share = (count - before.getValue()) / (after.getValue() - before.getValue());
    LocalDate day = seasons.last(from + share * (to - from));
    LocalDate atMost = after.getKey().minusDays(1);
    LocalDate bounded = day.isAfter(atMost) ? atMost : day;
    return bounded.isBefore(before.getKey()) ? before.getKey() : bounded;
  }

  private double between(
      Map.Entry<LocalDate, Double> before, Map.Entry<LocalDate, Double> after, LocalDate day) {
    double from = seasons.gone(before.getKey());
    double to = seasons.gone(after.getKey());
    double share = to - from < HAIR ? 0 : (seasons.gone(day) - from) / (to - from);
    boolean isReading = day.equals(after.getKey());
    return isReading
        ? after.getValue()
        : before.getValue() + share * (after.getValue() - before.getValue());
  }

  private double estimated(LocalDate from, LocalDate to) {
    return perSeason.orElse(0) * (seasons.gone(to) - seasons.gone(from));
  }

  private OptionalDouble rate() {
    if (readings.size() < 2) {
      return OptionalDouble.empty();
    }
    double end = seasons.gone(readings.lastKey());
    List<Map.Entry<LocalDate, Double>> recent =
        readings.entrySet().stream()
            .filter(reading -> end - seasons.gone(reading.getKey()) <= RATE_FROM_SEASONS + HAIR)
            .toList();
    double span = end - seasons.gone(recent.get(0).getKey());
    return span < LEAST_SEASONS
        ? OptionalDouble.empty()
        : OptionalDouble.of((readings.lastEntry().getValue() - recent.get(0).getValue()) / span);
  }
}
