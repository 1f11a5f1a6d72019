package limberboard.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;

/** One of the things that end an interval; whichever comes first counts. */
public sealed interface Limit {

  /** The last day within the limit; empty when the log does not tell. */
  Optional<LocalDate> last();

  /** Whether the day is an estimate and not reckoned from dates alone. */
  boolean isEstimated();

  /**
   * So much time.
   *
   * @param every the period, this boat's factors applied
   * @param day the day on which it is over
   */
  record Calendar(Period every, LocalDate day) implements Limit {
    @Override
    public Optional<LocalDate> last() {
      return Optional.of(day);
    }

    @Override
    public boolean isEstimated() {
      return false;
    }
  }

  /**
   * So many seasons afloat.
   *
   * @param seasons how many, this boat's factors applied, in steps of a quarter
   * @param day the last day on which no more have gone by; a launching where they are whole
   */
  record SeasonsAfloat(double seasons, LocalDate day) implements Limit {
    @Override
    public Optional<LocalDate> last() {
      return Optional.of(day);
    }

    @Override
    public boolean isEstimated() {
      return false;
    }
  }

  /**
   * So much of something counted: hours of the engine, hoists of the keel.
   *
   * @param what what is counted, in words: {@code engine hours}
   * @param allowed how many, this boat's factors applied
   * @param used how many since the work was done, until the day asked about
   * @param perSeason how many a season adds, where the log tells; otherwise 0
   * @param last the last day within the limit; empty when the log does not tell
   * @param isEstimated whether that day lies beyond the readings
   */
  record Counted(
      String what,
      double allowed,
      double used,
      double perSeason,
      Optional<LocalDate> last,
      boolean isEstimated)
      implements Limit {}
}
