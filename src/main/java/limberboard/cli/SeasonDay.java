package limberboard.cli;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.upkeep.Seasons;

/** Chooses the day on which the work of a season is looked at. */
final class SeasonDay {
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
    boolean isOver = season.filter(year -> year < seasons.around(today).year()).isPresent();
    return asked.orElseGet(
        () -> isOver ? seasons.season(season.orElseThrow() - 1).to().plusDays(1) : today);
  }
}
