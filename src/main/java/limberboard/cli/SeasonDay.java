package limberboard.cli;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.upkeep.Seasons;

/** Chooses the day on which the work of a season is looked at. */
final class SeasonDay {
  private static final int FURTHEST = 10;

  private SeasonDay() {}

  /**
   * The day asked for; otherwise today, or for a season that is over the day on which work for it
   * began, when the one before had ended, so that its whole work is seen.
   *
   * @param asked what {@code --on} said
   * @param season the year in which the season begins, if one was asked for
   */
  static LocalDate of(
      Optional<LocalDate> asked, Optional<Integer> season, Boat boat, LocalDate today) {
    Seasons seasons = Seasons.of(boat, boat.log());
    season.ifPresent(year -> check(year, boat, today));
    boolean isOver = season.filter(year -> year < seasons.around(today).year()).isPresent();
    return asked.orElseGet(
        () -> isOver ? seasons.season(season.orElseThrow() - 1).to().plusDays(1) : today);
  }

  private static void check(int year, Boat boat, LocalDate today) {
    if (year < boat.built() || year > today.getYear() + FURTHEST) {
      throw new Failure(
          ExitCode.USAGE,
          "--season is a year from "
              + boat.built()
              + ", when she was built, to "
              + (today.getYear() + FURTHEST));
    }
  }
}
