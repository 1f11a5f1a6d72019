package limberboard.upkeep.shopping;

import java.util.List;
import java.util.Optional;
import limberboard.upkeep.Planned;
import limberboard.upkeep.Upkeep;

/** The work of a season as jobs to shop for. */
public final class SeasonJobs {
  private SeasonJobs() {}

  /**
   * One job for each time that work is expected in a season, on its expected day. Looking again
   * takes nothing.
   *
   * @param upkeep what is due on the boat on the day of buying
   * @param year the year in which the season begins; empty for the current or coming one
   */
  public static List<Job> of(Upkeep upkeep, Optional<Integer> year) {
    int asked = year.orElseGet(() -> upkeep.thisSeason().year());
    return upkeep.season(asked).planned().stream()
        .filter(planned -> planned.after().isEmpty())
        .map(SeasonJobs::job)
        .toList();
  }

  private static Job job(Planned planned) {
    return new Job(planned.work(), 1, planned.day(), planned.isLookFirst());
  }
}
