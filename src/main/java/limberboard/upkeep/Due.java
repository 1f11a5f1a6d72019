package limberboard.upkeep;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.Appointment;
import limberboard.library.value.Consequence;
import limberboard.library.value.Interval;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.library.value.Work;

/**
 * One piece of recurring or following-up work on a boat, as it stands on a day.
 *
 * @param which what tells it from the other work on the boat
 * @param work the page to do it by; of a look again, the inspection it is done with
 * @param after of a look again, the work that it follows
 * @param group how urgent it is
 * @param since from when the interval runs
 * @param runsOut the last day within it, for reckoning on; empty when the log does not tell; see
 *     {@link #lastDay}
 * @param plan the day to do it: the nearest on which the boat is so that it can be done
 * @param phase when in the boat's year it is done, if the page says
 * @param season the year of the season to whose work it belongs
 * @param limits what ends the interval
 * @param estimated whether {@code runsOut} is an estimate from counts
 * @param expires whether it runs out by its date even unused
 * @param why the reason
 * @param round the round that it is done with, if it is
 * @param with of a round, what is done with it
 */
public record Due(
    WorkId which,
    Page<Procedure> work,
    Optional<Page<Procedure>> after,
    Group group,
    IntervalStart since,
    Optional<LocalDate> runsOut,
    LocalDate plan,
    Optional<Phase> phase,
    int season,
    List<Limit> limits,
    boolean estimated,
    boolean expires,
    Why why,
    Optional<InRound> round,
    List<Due> with) {
  /**
   * Gravest consequence first, then what is needed most, then what runs out first; of what is not
   * known, looks before what they are to tell about.
   */
  static final Comparator<Due> MATTERS_FIRST =
      Comparator.comparing(Due::group)
          .thenComparing(Due::consequence)
          .thenComparing(each -> each.group() == Group.NOT_KNOWN && !each.isLook())
          .thenComparing(Due::need)
          .thenComparing(each -> each.runsOut().orElse(LocalDate.MAX))
          .thenComparing(Due::id);

  /** Copies the lists. */
  public Due {
    limits = List.copyOf(limits);
    with = List.copyOf(with);
  }

  /** How urgent work is. */
  public enum Group {
    /** Its interval is over: its last day is today or gone. */
    OVERDUE("Overdue"),
    /**
     * Not in the log of a boat that was bought, where it would have run out before that: nobody
     * knows whether it was done.
     */
    NOT_KNOWN("Not known: look first"),
    /** To be done for or in this season, or the coming one while the boat is laid up. */
    THIS_SEASON("This season"),
    /** Over, or for this season, but left to whoever likes to do it. */
    OPTIONAL("Optional, for whoever likes to"),
    /** Later. */
    COMING("Coming after this season"),
    /** The log does not tell: it lacks readings. */
    UNKNOWN("The log does not tell");

    private static final String MEANING =
        "Not in her log, and counted from new its time was over before she was bought: nobody knows"
            + " whether it is overdue. Look, what can hurt first, and log what you find.";

    private final String heading;

    Group(String heading) {
      this.heading = heading;
    }

    /** What is written above it. */
    public String heading() {
      return heading;
    }

    /** What the heading means, where that is not plain. */
    public Optional<String> meaning() {
      return this == NOT_KNOWN ? Optional.of(MEANING) : Optional.empty();
    }
  }

  /** Whether its last day is known, and is gone or is this one. */
  public boolean isOver(LocalDate on) {
    return lastDay().filter(last -> !last.isAfter(on)).isPresent();
  }

  /**
   * Whether it is over, for this season or not known whether it was ever done, and not left to
   * whoever likes to do it.
   */
  boolean isNow() {
    return group == Group.OVERDUE || group == Group.NOT_KNOWN || group == Group.THIS_SEASON;
  }

  /** Whether it is known when it was done, or that the boat was new then. */
  public boolean isKnown() {
    return since.isKnown();
  }

  /** Whether it is a look at something, and changes nothing. */
  public boolean isLook() {
    return work.details().work() == Work.INSPECT;
  }

  /**
   * Whether nobody knows when it was last done, and a look or a question may show that it need not
   * be done; what is a look itself is done in any case.
   */
  public boolean isLookFirst() {
    return !isKnown() && !isLook();
  }

  /**
   * The last day within its interval, as an owner can be told it: none for what nobody knows when
   * it was done.
   */
  public Optional<LocalDate> lastDay() {
    return isKnown() ? runsOut : Optional.empty();
  }

  /** As {@link WorkId#text}. */
  public String id() {
    return which.text();
  }

  /** Whether it is a look again after other work. */
  public boolean isLookAgain() {
    return after.isPresent();
  }

  /** The same, done with a round. */
  Due in(InRound in) {
    return copy(group, Optional.of(in), with);
  }

  /** The same by itself and not with a round. */
  public Due alone() {
    return copy(group, Optional.empty(), with);
  }

  /** The same round without some of what is done with it. */
  public Due without(List<Due> some) {
    return copy(group, round, with.stream().filter(each -> !some.contains(each)).toList());
  }

  /** The same in another group, with all that is done with it. */
  Due in(Group other) {
    return copy(other, round, with.stream().map(each -> each.in(other)).toList());
  }

  /** The same round with what is done with it, in the gravest group of all of these. */
  Due graver(List<Due> all) {
    return copy(
        group == Group.COMING ? group : first(group, all.stream().map(Due::group)), round, all);
  }

  /** The first of these in the order of their kind. */
  private static <E extends Enum<E>> E first(E own, Stream<E> others) {
    return Stream.concat(Stream.of(own), others).min(Comparator.naturalOrder()).orElseThrow();
  }

  /** The same for another reason. */
  Due because(Why reason) {
    return new Due(
        which, work, after, group, since, runsOut, plan, phase, season, limits, estimated, expires,
        reason, round, with);
  }

  private Due copy(Group newGroup, Optional<InRound> newRound, List<Due> newWith) {
    return new Due(
        which, work, after, newGroup, since, runsOut, plan, phase, season, limits, estimated,
        expires, why, newRound, newWith);
  }

  /**
   * What it asks of the owner, in minutes of somebody practised, without what is opened for it; of
   * a round its own, without what is done with it.
   */
  public int ownerMinutes() {
    return round.map(InRound::minutes).orElseGet(() -> OwnerTime.of(work, after));
  }

  /** With whom, and how long before, it has to be booked; nothing for what the owner does. */
  public Optional<Appointment> appointment() {
    return isOwnLook() ? Optional.empty() : OwnerTime.appointment(work.details());
  }

  /**
   * Whether it is the owner's look again, by the work's own last test, at what somebody else did.
   * Only what needs a licence is looked at by whoever has it.
   */
  private boolean isOwnLook() {
    return after.map(Page::id).filter(work.id()::equals).isPresent()
        && work.details().skill() != Skill.LICENSED;
  }

  /** Who may do it; see {@link #appointment} for whom it is booked with. */
  public Skill skill() {
    Skill skill = work.details().skill();
    return isOwnLook() && !skill.ownerMay() ? Skill.OWNER : skill;
  }

  /**
   * What follows when it is left undone; of a look again, what follows of the work that it is
   * after; of a round, the gravest of all that is done with it.
   */
  public Consequence consequence() {
    return first(ownConsequence(), with.stream().map(Due::consequence));
  }

  /** What follows when this alone is left undone, whatever is done with it. */
  public Consequence ownConsequence() {
    return after
        .orElse(work)
        .details()
        .interval()
        .map(Interval::consequence)
        .orElse(Consequence.UNSAID);
  }

  /**
   * How much it is needed; of a look again, as much as the work that it is after, and at least as
   * {@link Need#SHOULD}; of a round, as much as what is needed most of it.
   */
  public Need need() {
    return first(ownNeed(), with.stream().map(Due::need));
  }

  /** How much this alone is needed, whatever is done with it. */
  public Need ownNeed() {
    return needed(work, after);
  }

  /** How much work is needed, or a look again after it. */
  static Need needed(Page<Procedure> work, Optional<Page<Procedure>> after) {
    Need need = after.orElse(work).details().interval().map(Interval::needed).orElse(Need.UNSAID);
    return after.isPresent() && need == Need.OPTIONAL ? Need.SHOULD : need;
  }

  /** What follows when it is left undone, and how much it is needed: {@code can stop the boat}. */
  public String matters() {
    return consequence().said() + (need() == Need.MUST ? "" : "; " + need().spoken());
  }

  /** It, and of a round all that is done with it. */
  public List<Due> all() {
    return Stream.concat(Stream.of(this), with.stream()).toList();
  }

  /** What it is called on a list. */
  public String title() {
    return after.map(page -> "Look again: " + page.title()).orElseGet(work::title);
  }
}
