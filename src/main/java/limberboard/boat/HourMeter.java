package limberboard.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import limberboard.library.value.LogEvents;

/**
 * The readings of a boat's hour meter that can be believed: hours never run backwards, so the
 * fewest readings are left out that leave the rest in order. A replaced meter counts on from where
 * the old one stood. Immutable.
 *
 * @param readings hours since the first meter was new, by date; never falling
 * @param doubted the entries whose readings were left out
 */
public record HourMeter(List<Reading> readings, List<LogEntry> doubted) {
  /** Copies the lists. */
  public HourMeter {
    readings = List.copyOf(readings);
    doubted = List.copyOf(doubted);
  }

  /**
   * A reading.
   *
   * @param date the day
   * @param hours hours of the engine, replaced meters added, 0 or more
   */
  public record Reading(LocalDate date, double hours) {}

  /** Reads the meter off log entries that stand in the order of their dates. */
  public static HourMeter of(List<LogEntry> log) {
    List<Reading> trusted = new ArrayList<>();
    List<LogEntry> doubted = new ArrayList<>();
    List<LogEntry> oneMeter = new ArrayList<>();
    for (LogEntry entry : log) {
      if (entry.work().equals(LogEvents.NEW_METER)) {
        close(oneMeter, trusted, doubted);
        oneMeter.clear();
        oneMeter.add(entry);
      } else if (entry.engineHours().isPresent()) {
        oneMeter.add(entry);
      }
    }
    close(oneMeter, trusted, doubted);
    return new HourMeter(trusted, doubted);
  }

  private static void close(
      List<LogEntry> oneMeter, List<Reading> trusted, List<LogEntry> doubted) {
    if (oneMeter.isEmpty()) {
      return;
    }
    boolean renewed = oneMeter.get(0).work().equals(LogEvents.NEW_METER);
    double stood = trusted.isEmpty() ? 0 : trusted.get(trusted.size() - 1).hours();
    double before = renewed ? stood - hours(oneMeter.get(0)) : 0;
    List<LogEntry> kept = neverFalling(oneMeter);
    kept.forEach(entry -> trusted.add(new Reading(entry.date(), before + hours(entry))));
    oneMeter.stream().filter(entry -> !kept.contains(entry)).forEach(doubted::add);
  }

  private static double hours(LogEntry entry) {
    return entry.engineHours().orElse(0);
  }

  /** The longest run of readings that never falls; of several the one that is complete first. */
  private static List<LogEntry> neverFalling(List<LogEntry> entries) {
    int[] length = new int[entries.size()];
    int[] before = new int[entries.size()];
    int best = 0;
    List<Integer> ends = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      double hours = hours(entries.get(i));
      int low = 0;
      int high = ends.size();
      while (low < high) {
        int middle = (low + high) / 2;
        if (hours(entries.get(ends.get(middle))) <= hours) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      length[i] = low + 1;
      before[i] = low == 0 ? -1 : ends.get(low - 1);
      if (low == ends.size()) {
        ends.add(i);
      } else {
        ends.set(low, i);
      }
      best = length[i] > length[best] ? i : best;
    }
    List<LogEntry> kept = new ArrayList<>();
    for (int i = best; i >= 0; i = before[i]) {
      kept.add(entries.get(i));
    }
    Collections.reverse(kept);
    return kept;
  }
}
