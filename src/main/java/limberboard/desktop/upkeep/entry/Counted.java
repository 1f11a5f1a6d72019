package limberboard.desktop.upkeep.entry;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import limberboard.boat.Boat;
import limberboard.library.value.Interval;
import limberboard.words.DayText;

/** What is counted on a boat. */
public final class Counted {
  private Counted() {}

  /** The uses that a boat's log counts, and those that an interval asks for. */
  public static List<String> uses(Boat boat, Optional<Interval> interval) {
    TreeSet<String> uses = new TreeSet<>();
    boat.log().forEach(entry -> uses.addAll(entry.uses().keySet()));
    interval.ifPresent(known -> uses.addAll(known.uses().keySet()));
    return List.copyOf(uses);
  }

  /** The hour meter's last reading, in words; empty when it was never read. */
  public static Optional<String> lastHours(Boat boat) {
    return boat.log().stream()
        .filter(entry -> entry.engineHours().isPresent())
        .reduce((earlier, later) -> later)
        .map(
            entry ->
                EntryWords.hours(entry.engineHours()) + " on " + DayText.written(entry.date()));
  }
}
