package limberboard.upkeep;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.boat.Season;
import limberboard.library.value.LogEvents;

/**
 * A boat's seasons afloat, one a year: as her log has them, otherwise as her {@code season} says. A
 * day counts to the season whose middle of winter it follows, so that seasons south of the equator,
 * which run over the year's end, need nothing of their own. Immutable.
 *
 * <p>A haul-out in the middle of a season does not divide it. Where the log lacks a launch or a
 * haul-out, or has none yet, the boat's usual day stands in.
 */
public final class Seasons {
  /** What is assumed of a boat whose file gives no season. */
  public static final Season ASSUMED = new Season(MonthDay.of(4, 15), MonthDay.of(10, 15));

  private static final double HAIR = 1e-6;

  private final Season usual;
  private final boolean assumed;
  private final Map<Integer, LocalDate> launched = new HashMap<>();
  private final Map<Integer, LocalDate> launchedLast = new HashMap<>();
  private final Map<Integer, LocalDate> hauledOut = new HashMap<>();
  private final Map<Integer, LocalDate> middles = new ConcurrentHashMap<>();
  private final Map<Integer, AfloatSeason> known = new ConcurrentHashMap<>();

  private Seasons(Optional<Season> season, List<LogEntry> log) {
    this.usual = season.orElse(ASSUMED);
    this.assumed = season.isEmpty();
    for (LogEntry entry : log) {
      int year = usualYear(entry.date());
      if (entry.work().equals(LogEvents.LAUNCHED)) {
        launched.putIfAbsent(year, entry.date());
        launchedLast.put(year, entry.date());
      } else if (entry.work().equals(LogEvents.HAULED_OUT)) {
        hauledOut.put(year, entry.date());
      }
    }
  }

  /**
   * The seasons of a boat.
   *
   * @param boat the boat
   * @param log her log in the order of its dates, without what lies in the future
   */
  public static Seasons of(Boat boat, List<LogEntry> log) {
    return new Seasons(boat.season(), log);
  }

  /** Whether the boat's file gives no season, so that one is assumed. */
  public boolean areAssumed() {
    return assumed;
  }

  /** The season that begins in this year. */
  public AfloatSeason season(int year) {
    return known.computeIfAbsent(year, this::reckoned);
  }

  private AfloatSeason reckoned(int year) {
    LocalDate from = launched.getOrDefault(year, usualFrom(year));
    LocalDate to = hauledOut.getOrDefault(year, usualTo(year));
    LocalDate last = launchedLast.getOrDefault(year, from);
    if (last.isAfter(to)) {
      to = later(usualTo(year), last.plusDays(1));
    }
    if (!from.isBefore(to)) {
      from = launched.containsKey(year) ? to : earlier(usualFrom(year), to);
    }
    return new AfloatSeason(year, from, to);
  }

  /** The season that a day is in, or the next one when the boat is laid up. */
  public AfloatSeason around(LocalDate day) {
    AfloatSeason season = season(usualYear(day));
    return day.isAfter(season.to()) ? season(season.year() + 1) : season;
  }

  /** Whether the boat is afloat on a day. */
  public boolean afloat(LocalDate day) {
    return around(day).contains(day);
  }

  /**
   * The last day on which the laying up after the season of this year can still be caught up with:
   * just before the middle of the winter; at the earliest the day of the haul-out.
   */
  public LocalDate layingUpEnds(int year) {
    LocalDate over = season(year).to();
    long ashore = ChronoUnit.DAYS.between(over, season(year + 1).from());
    return over.plusDays(Math.max(0, (ashore - 1) / 2));
  }

  /**
   * How many seasons have gone by until a day, counted from an arbitrary beginning: whole numbers
   * at launchings, growing evenly through each season and standing still in winter.
   */
  public double gone(LocalDate day) {
    AfloatSeason season = around(day);
    if (day.isBefore(season.from())) {
      return season.year();
    }
    return season.year() + days(season.from(), day) / length(season);
  }

  /** The last day on which no more than so many seasons, as {@link #gone} counts, have gone by. */
  public LocalDate last(double gone) {
    int year = (int) Math.floor(gone);
    AfloatSeason season = season(year);
    double share = gone - year;
    return season.from().plusDays((long) (share * length(season) + HAIR));
  }

  private int usualYear(LocalDate day) {
    int year = day.getYear();
    if (day.isBefore(middleOfWinter(year))) {
      return year - 1;
    }
    return day.isBefore(middleOfWinter(year + 1)) ? year : year + 1;
  }

  /** The middle of the time ashore before the season of this year. */
  private LocalDate middleOfWinter(int year) {
    return middles.computeIfAbsent(
        year,
        asked -> {
          LocalDate before = usualTo(asked - 1);
          LocalDate after = usualFrom(asked);
          return before.plusDays(ChronoUnit.DAYS.between(before, after) / 2 + 1);
        });
  }

  private LocalDate usualFrom(int year) {
    return usual.from().atYear(year);
  }

  private LocalDate usualTo(int year) {
    boolean overYearsEnd = !usual.from().isBefore(usual.to());
    LocalDate to = usual.to().atYear(overYearsEnd ? year + 1 : year);
    return earlier(to, usualFrom(year + 1).minusDays(1));
  }

  private static double length(AfloatSeason season) {
    return Math.max(1, days(season.from(), season.to()));
  }

  private static double days(LocalDate from, LocalDate to) {
    return ChronoUnit.DAYS.between(from, to);
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }
}
