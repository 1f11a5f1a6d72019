package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.library.value.Amount;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Interval;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Outsider;
import limberboard.library.value.Required;
import limberboard.library.value.Skill;
import limberboard.library.value.Within;
import limberboard.library.value.Work;

/**
 * How one job is done.
 *
 * @param work what it does
 * @param skill who may do it
 * @param minutes the work itself, without access, 1 to 10 000
 * @param minutesFor the size of boat that the minutes stand for, where they grow with the boat
 * @param access ids of what must be opened first
 * @param tools tools
 * @param materials materials and amounts
 * @param cautions what it names as its cautions
 * @param lookFor what good and bad look like
 * @param interval how often it is done
 * @param lookAgain the follow-up afterwards
 * @param resets procedures whose interval starts anew when this is done
 * @param before procedures that come after this one when both are to be done
 * @param round of a round, the work that is done at one go with it
 * @param appointment of work that somebody else does, with whom and when it is booked
 * @param ownerParts headings of the sections that are the owner's although the work is for the
 *     licensed; the rest of such a page is not printed
 * @param workings sums shown with it
 */
public record Procedure(
    @Required Work work,
    @Required Skill skill,
    @Required Integer minutes,
    Optional<BoatSize> minutesFor,
    @Names(Named.ACCESS) List<String> access,
    List<ToolUse> tools,
    List<MaterialUse> materials,
    List<CautionUse> cautions,
    Optional<LookFor> lookFor,
    Optional<Interval> interval,
    Optional<LookAgain> lookAgain,
    @Names(Named.PROCEDURE) List<String> resets,
    @Names(Named.PROCEDURE) List<String> before,
    List<RoundWork> round,
    Optional<Appointment> appointment,
    List<String> ownerParts,
    List<SumUse> workings)
    implements Details {
  /** The longest that work may take, in minutes. */
  public static final int MOST_MINUTES = 10_000;

  /** Absent entries become empty ones. */
  public Procedure {
    minutesFor = EmptyValues.optional(minutesFor);
    access = EmptyValues.list(access);
    tools = EmptyValues.list(tools);
    materials = EmptyValues.list(materials);
    cautions = EmptyValues.list(cautions);
    lookFor = EmptyValues.optional(lookFor);
    interval = EmptyValues.optional(interval);
    lookAgain = EmptyValues.optional(lookAgain);
    resets = EmptyValues.list(resets);
    before = EmptyValues.list(before);
    round = EmptyValues.list(round);
    appointment = EmptyValues.optional(appointment);
    ownerParts = EmptyValues.list(ownerParts);
    workings = EmptyValues.list(workings);
  }

  @Override
  public Kind kind() {
    return Kind.PROCEDURE;
  }

  /** Whether it is a round: work that a person does at one go, with other pages' work in it. */
  public boolean isRound() {
    return !round.isEmpty();
  }

  /** The same work with other minutes: its own, and those within a round. */
  public Procedure taking(int own, List<RoundWork> within) {
    return new Procedure(
        work,
        skill,
        own,
        Optional.empty(),
        access,
        tools,
        materials,
        cautions,
        lookFor,
        interval,
        lookAgain,
        resets,
        before,
        within,
        appointment,
        ownerParts,
        workings);
  }

  /**
   * The size of boat that minutes stand for. Those of another boat are in proportion: where the
   * antifouled area is half, so are the minutes of painting it.
   *
   * @param measure the name under a model's {@code measures}
   * @param of what it measures on the boat that the minutes stand for, more than nothing
   */
  public record BoatSize(
      @Required @Names(Named.MEASURE) String measure, @Required Amount.Fixed of) {}

  /**
   * Work that belongs to a round.
   *
   * @param work the procedure's id (key {@code do})
   * @param minutes what it takes within the round, practised, 1 to 10 000; without it, as long as
   *     by itself
   */
  public record RoundWork(
      @Required @Names(Named.PROCEDURE) @JsonProperty("do") String work,
      @Within(least = 1, most = MOST_MINUTES) OptionalInt minutes) {
    /** Absent entries become empty ones. */
    public RoundWork {
      minutes = minutes == null ? OptionalInt.empty() : minutes;
    }
  }

  /**
   * Work that somebody else does for the owner.
   *
   * @param with who does it
   * @param minutes what it asks of the owner, 1 to 10 000
   * @param book how long before it has to be booked; none where a call the day before will do
   */
  public record Appointment(
      @Required Outsider with,
      @Required @Within(least = 1, most = MOST_MINUTES) Integer minutes,
      Optional<Period> book) {
    /** How many weeks before it is booked where a page does not say. */
    public static final int UNSAID_WEEKS = 6;

    /** What is taken for work left to others where a page does not say: the yard, half an hour. */
    public static final Appointment UNSAID =
        new Appointment(Outsider.YARD, 30, Optional.of(Period.ofWeeks(UNSAID_WEEKS)));

    /** Absent entries become empty ones. */
    public Appointment {
      book = EmptyValues.optional(book);
    }

    /** How long before it is booked: as the page says, or the day before. */
    public Period ahead() {
      return book.orElse(Period.ofDays(1));
    }
  }

  /**
   * What good and bad look like.
   *
   * @param good what may stay as it is
   * @param bad what must be dealt with
   */
  public record LookFor(@Required String good, @Required String bad) {}

  /**
   * A follow-up after the work.
   *
   * @param after how long after
   * @param with the procedure to look again with; empty means this one's own last test
   */
  public record LookAgain(@Required Period after, @Names(Named.PROCEDURE) Optional<String> with) {
    /** Absent entries become empty ones. */
    public LookAgain {
      with = EmptyValues.optional(with);
    }
  }
}
