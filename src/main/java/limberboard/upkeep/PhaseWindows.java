package limberboard.upkeep;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.value.Phase;

/**
 * When in a boat's years each phase of work can be done, and which day to choose for it. Immutable.
 */
final class PhaseWindows {
  /** How long the mast usually stands before launching and after the haul-out. */
  private static final int MAST_UP_DAYS = 21;

  /** A tenth of an interval, but at most a month, may be gone over to reach a phase. */
  private static final int SLACK_SHARE = 10;

  private static final int MOST_SLACK_DAYS = 31;

  private final Seasons seasons;

  PhaseWindows(Seasons seasons) {
    this.seasons = seasons;
  }

  /**
   * Days on which work of a phase can be done.
   *
   * @param season the year of the season it belongs to
   * @param from first day
   * @param to last day
   */
  record Window(int season, LocalDate from, LocalDate to) {
    boolean contains(LocalDate day) {
      return !day.isBefore(from) && !day.isAfter(to);
    }
  }

  /**
   * The day to do work that began on one day and runs out on another: that day itself if the work
   * can be done then, otherwise the nearest day that can be, with at least half the interval used
   * and no more than a little gone over. Laying-up work is done at the haul-out.
   */
  LocalDate plan(Optional<Phase> phase, LocalDate base, LocalDate runsOut) {
    if (phase.isEmpty()) {
      return runsOut;
    }
    long length = ChronoUnit.DAYS.between(base, runsOut);
    LocalDate earliest = base.plusDays(length / 2 + 1);
    LocalDate latest = runsOut.plusDays(Math.min(MOST_SLACK_DAYS, length / SLACK_SHARE));
    LocalDate best = runsOut;
    long nearest = Long.MAX_VALUE;
    for (Window window : around(phase.get(), runsOut)) {
      boolean layingUp = phase.get() == Phase.LAY_UP;
      LocalDate day = layingUp ? window.from() : nearest(window, runsOut);
      long distance = Math.abs(ChronoUnit.DAYS.between(day, runsOut));
      if (!day.isBefore(earliest) && !day.isAfter(latest) && distance < nearest) {
        nearest = distance;
        best = day;
      }
    }
    return best;
  }

  /** The first day, from this one on, on which work of the phase can be done. */
  LocalDate next(Optional<Phase> phase, LocalDate from) {
    return phase
        .flatMap(
            known ->
                around(known, from).stream()
                    .filter(window -> !window.to().isBefore(from))
                    .map(window -> nearest(window, from))
                    .findFirst())
        .orElse(from);
  }

  /** The year of the season that work of a phase done on this day belongs to. */
  int season(Optional<Phase> phase, LocalDate day) {
    if (phase.filter(known -> known == Phase.LAY_UP).isPresent()) {
      return around(Phase.LAY_UP, day).stream()
          .filter(window -> window.contains(day))
          .findFirst()
          .map(Window::season)
          .orElseGet(() -> seasons.around(day).year());
    }
    return seasons.around(day).year();
  }

  private List<Window> around(Phase phase, LocalDate day) {
    int year = seasons.around(day).year();
    List<Window> windows = new ArrayList<>();
    for (int season = year - 1; season <= year + 1; season++) {
      windows.addAll(windows(phase, season));
    }
    return windows;
  }

  /** When work of a phase can be done for the season of this year, by date. */
  private List<Window> windows(Phase phase, int year) {
    AfloatSeason season = seasons.season(year);
    LocalDate ashore = seasons.season(year - 1).to().plusDays(1);
    LocalDate before = season.from().minusDays(1);
    LocalDate lastAshore = before.isBefore(ashore) ? ashore : before;
    return switch (phase) {
      case ASHORE_MAST_DOWN -> List.of(new Window(year, ashore, lastAshore));
      case ASHORE_MAST_UP ->
          List.of(
              new Window(year, ashore, earlier(lastAshore, ashore.plusDays(MAST_UP_DAYS))),
              new Window(year, later(ashore, lastAshore.minusDays(MAST_UP_DAYS)), lastAshore));
      case AFLOAT, UNDER_SAIL -> List.of(new Window(year, season.from(), season.to()));
      case LAY_UP ->
          List.of(
              new Window(
                  year,
                  season.to(),
                  later(season.to(), seasons.season(year + 1).from().minusDays(1))));
    };
  }

  private static LocalDate nearest(Window window, LocalDate day) {
    if (day.isBefore(window.from())) {
      return window.from();
    }
    return day.isAfter(window.to()) ? window.to() : day;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }
}
