package limberboard.upkeep;

import java.util.List;
import limberboard.boat.Fitting;
import limberboard.boat.LogEntry;

/**
 * What the reckoning of one boat's dates rests on.
 *
 * @param fitting the boat on the day asked about
 * @param log her log up to that day, by date
 * @param seasons her seasons
 * @param meters what is counted on her
 */
record BoatCalendar(Fitting fitting, List<LogEntry> log, Seasons seasons, Meters meters) {

  /** The calendar of a boat on a day; what her log has after that day is not looked at. */
  static BoatCalendar of(Fitting fitting) {
    List<LogEntry> log = fitting.log();
    Seasons seasons = Seasons.of(fitting.boat(), log);
    return new BoatCalendar(fitting, log, seasons, Meters.of(log, seasons));
  }
}
