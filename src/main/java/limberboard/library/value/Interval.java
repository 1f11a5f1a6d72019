package limberboard.library.value;

import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import limberboard.library.problem.Limits;

/**
 * How often work is done; where several limits stand, whichever comes first.
 *
 * @param every calendar period
 * @param seasons seasons afloat, at least 1
 * @param engineHours hours of the engine, greater than 0
 * @param uses counted uses, such as hoists, each greater than 0
 * @param fromAge the age of the boat from which on it is done
 * @param fromEvent a procedure id or an event of the log; it runs only once that stands in the log
 * @param phase when in the year it is done
 * @param expires whether it runs out by its date even when unused
 * @param forWinter whether the work is for the winter itself, so that what was not done by the
 *     middle of one waits for the next laying up
 * @param surveyed whether a surveyor of the boat ashore looks at it as a rule
 * @param leftUndone what follows when it is left undone, if the page says
 * @param need how much it is needed, if the page says
 * @param factors what shortens or lengthens it for some boats
 */
public record Interval(
    Optional<Period> every,
    @Within(least = 1, most = Limits.PERIOD_YEARS) OptionalInt seasons,
    OptionalDouble engineHours,
    Map<String, Integer> uses,
    Optional<Period> fromAge,
    @Names(Named.LOG_WORD) Optional<String> fromEvent,
    Optional<Phase> phase,
    boolean expires,
    boolean forWinter,
    boolean surveyed,
    Optional<Consequence> leftUndone,
    Optional<Need> need,
    List<Factor> factors) {

  /** Absent entries become empty ones. */
  public Interval {
    every = EmptyValues.optional(every);
    seasons = seasons == null ? OptionalInt.empty() : seasons;
    engineHours = engineHours == null ? OptionalDouble.empty() : engineHours;
    uses = EmptyValues.map(uses);
    fromAge = EmptyValues.optional(fromAge);
    fromEvent = EmptyValues.optional(fromEvent);
    phase = EmptyValues.optional(phase);
    leftUndone = EmptyValues.optional(leftUndone);
    need = EmptyValues.optional(need);
    factors = EmptyValues.list(factors);
  }

  /**
   * What follows when it is left undone: as the page says, otherwise {@link Consequence#UNSAID}.
   */
  public Consequence consequence() {
    return leftUndone.orElse(Consequence.UNSAID);
  }

  /** How much it is needed: as the page says, otherwise {@link Need#UNSAID}. */
  public Need needed() {
    return need.orElse(Need.UNSAID);
  }

  /** Whether no limit is given at all, which is a mistake. */
  public boolean hasNoLimit() {
    return every.isEmpty() && seasons.isEmpty() && engineHours.isEmpty() && uses.isEmpty();
  }

  /**
   * Something that multiplies a number for boats that meet a condition.
   *
   * @param when the condition
   * @param times the factor, greater than 0
   */
  public record Factor(@Required Condition when, @Required Double times) {
    private static final double PER_CENT = 100;

    /** What it does to an interval, in words: {@code halved}, {@code shortened to 75 per cent}. */
    public String change() {
      if (times == 0.5) {
        return "halved";
      }
      if (times == 2) {
        return "doubled";
      }
      return (times < 1 ? "shortened to " : "lengthened to ")
          + Math.round(times * PER_CENT)
          + " per cent";
    }
  }
}
