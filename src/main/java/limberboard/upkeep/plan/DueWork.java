package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.time.Period;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.Appointment;
import limberboard.library.value.Consequence;
import limberboard.library.value.Interval;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.upkeep.Due;
import limberboard.upkeep.Task;

/**
 * A piece of work that is due: everything that is due and done by one page, and of a round all that
 * is done with it.
 *
 * @param dues what is due, at least one; the work itself before looks again done with its page
 * @param phase when in the boat's year it is done; empty when it can be done at any time
 */
public record DueWork(List<Due> dues, Optional<Phase> phase) {
  /** Copies the list. */
  public DueWork {
    dues = List.copyOf(dues);
  }

  private Due first() {
    return dues.get(0);
  }

  /** The page it is done by. */
  public Page<Procedure> work() {
    return first().work();
  }

  /** Its page, and of a round the pages of what is done with it. */
  public List<Page<Procedure>> pages() {
    return first().all().stream().map(Due::work).toList();
  }

  /** All that is due and done with it. */
  public List<Due> all() {
    return dues.stream().flatMap(due -> due.all().stream()).toList();
  }

  /** What it is called. */
  public String title() {
    return first().title();
  }

  /** The worst that follows when it is left undone. */
  public Consequence consequence() {
    return dues.stream().map(Due::consequence).min(Comparator.naturalOrder()).orElseThrow();
  }

  /** How much it is needed at most. */
  public Need need() {
    return dues.stream().map(Due::need).min(Comparator.naturalOrder()).orElseThrow();
  }

  /** Whether doing this does other work as well, so that that need not be done by itself. */
  boolean does(DueWork other) {
    boolean single = other.dues.size() == 1 && other.all().size() == 1;
    return single
        && !other.first().isLookAgain()
        && dues.stream()
            .filter(due -> !due.isLookAgain())
            .flatMap(due -> due.all().stream())
            .map(due -> due.work())
            .filter(page -> !page.id().equals(other.work().id()))
            .anyMatch(page -> page.details().resets().contains(other.work().id()));
  }

  /**
   * Whether what comes after it must not be done without it: a must, or what can sink her or hurt
   * somebody. Other work only comes first where it is done at all.
   */
  boolean holdsUp() {
    return need() == Need.MUST || consequence().compareTo(Consequence.HURTS) <= 0;
  }

  /** A practised owner's own minutes, without opening anything. */
  public int minutes() {
    return first().all().stream().mapToInt(Due::ownerMinutes).sum();
  }

  /** With whom it is booked; nothing for what the owner does. */
  public Optional<Appointment> appointment() {
    return first().appointment();
  }

  /** How long before it has to be booked; nothing when it has not. */
  public Period book() {
    return appointment().map(Appointment::ahead).orElse(Period.ZERO);
  }

  /** The first last day, for reckoning on; see {@link #lastDay}. */
  public Optional<LocalDate> runsOut() {
    return all().stream().map(Due::runsOut).flatMap(Optional::stream).min(LocalDate::compareTo);
  }

  /** The first last day that is known; of what nobody knows when it was done none. */
  public Optional<LocalDate> lastDay() {
    return all().stream().map(Due::lastDay).flatMap(Optional::stream).min(LocalDate::compareTo);
  }

  /** Whether nobody knows of any of it when it was done. */
  public boolean isNotKnown() {
    return all().stream().noneMatch(Due::isKnown);
  }

  /** Whether it is a look at something, and with a round all that is done with it is. */
  public boolean isLook() {
    return all().stream().allMatch(Due::isLook);
  }

  /** Whether something of it keeps the frost out. */
  public boolean isForWinter() {
    return pages().stream()
        .map(page -> page.details().interval())
        .flatMap(Optional::stream)
        .anyMatch(Interval::forWinter);
  }

  /** Whether it must be done, and leaving it can sink her or hurt somebody. */
  public boolean isGraveMust() {
    return grave().findFirst().isPresent();
  }

  /** The first day on which something of it runs out that must be done, and can sink or hurt. */
  Optional<LocalDate> graveRunsOut() {
    return grave().map(Due::runsOut).flatMap(Optional::stream).min(LocalDate::compareTo);
  }

  private Stream<Due> grave() {
    return all().stream()
        .filter(due -> due.ownNeed() == Need.MUST)
        .filter(due -> due.ownConsequence().compareTo(Consequence.HURTS) <= 0);
  }

  /** Its cautions on a boat, those of a round's work included. */
  public List<WorkCaution> cautions(WorkCautions known) {
    return WorkCautions.joined(pages().stream().map(known::of).toList());
  }

  /** The danger it takes out when it would otherwise stay undone until a day. */
  long danger(LocalDate until) {
    return all().stream().mapToLong(due -> danger(due, until)).sum();
  }

  private static long danger(Due due, LocalDate until) {
    int overdue =
        due.lastDay().map(day -> DangerScale.overdue(due.since().date(), day, until)).orElse(0);
    return DangerScale.danger(due.ownConsequence(), due.ownNeed(), overdue);
  }

  /** The comfort it brings where it takes out no danger. */
  long comfort() {
    return all().stream()
        .mapToLong(due -> DangerScale.comfort(due.ownConsequence(), due.ownNeed()))
        .sum();
  }

  /** The work as lists have it, in a phase. */
  Task task(Phase phase) {
    return task(first(), phase);
  }

  private static Task task(Due due, Phase phase) {
    return new Task(
        due.work(),
        phase,
        due.why(),
        due.lastDay(),
        due.round(),
        due.with().stream().map(each -> task(each, phase)).toList());
  }
}
