package limberboard.trace;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.effort.Advice;
import limberboard.effort.Planner;
import limberboard.effort.Policy;
import limberboard.effort.Situation;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.TrailStep.Answered;
import limberboard.trace.TrailStep.CouldNotTell;
import limberboard.trace.TrailStep.MadeSafe;
import limberboard.trace.TrailStep.MendFailed;

/**
 * Following one symptom on one boat to its cause. Immutable: every answer makes a new trace.
 * Everything follows from the answers alone, so their order does not matter and any of them can be
 * changed or taken back. Whatever names a check, an answer or a cause that this fault has not
 * throws an {@link IllegalArgumentException}. Two traces of the same fault with the same trail are
 * equal. Safe for use by several threads.
 */
public final class Trace {
  /** A cause with at least this chance counts as found. */
  public static final double SETTLED = 0.8;

  private final Fault fault;
  private final Policy policy;
  private final Trail trail;
  private final Lazy<Situation> situation;
  private final Lazy<Advice> advice;
  private final Lazy<List<RankedCause>> ranking;
  private final Lazy<NextStep> next;
  private final Lazy<List<Alternative>> alternatives;
  private final Lazy<List<TrailEntry>> entries;
  private final Lazy<Optional<Contradiction>> contradiction;
  private final Lazy<Optional<SecondFault>> secondFault;

  private Trace(
      Fault fault, Policy policy, Trail trail, Lazy<Situation> situation, Lazy<Advice> advice) {
    this.fault = fault;
    this.policy = policy;
    this.trail = trail;
    this.situation = situation;
    this.advice = advice;
    this.ranking = new Lazy<>(() -> RankedCause.all(fault, trail, situation.get()));
    this.next = new Lazy<>(() -> steps().next());
    this.alternatives = new Lazy<>(() -> steps().all());
    this.entries = new Lazy<>(() -> new TrailLines(fault).all(trail));
    this.contradiction = new Lazy<>(() -> new Clash(fault, trail.answerNumbers(fault)).found());
    this.secondFault =
        new Lazy<>(
            () -> new TwoFaults(fault, trail.answerNumbers(fault), trail.failed(fault)).found());
  }

  private static Trace of(Fault fault, Policy policy, Trail trail) {
    Lazy<Situation> situation = new Lazy<>(() -> trail.situation(fault));
    Lazy<Advice> advice = new Lazy<>(() -> policy.advise(fault.model(), situation.get()));
    return new Trace(fault, policy, trail, situation, advice);
  }

  /**
   * Begins a trace that looks for the best strategy as far as that is done {@link Planner at once}.
   */
  public static Trace begin(Fault fault) {
    return begin(fault, new Planner());
  }

  /** Begins a trace that chooses its steps by a policy of one's own. */
  public static Trace begin(Fault fault, Policy policy) {
    return of(fault, policy, Trail.EMPTY);
  }

  /**
   * Begins a trace as {@link #begin(Fault)} does, for somebody who wants to know of its planning.
   *
   * @param planning called each time a step is about to be planned, on the thread that plans
   */
  public static Trace begin(Fault fault, Runnable planning) {
    return begin(fault, new Planner().telling(planning));
  }

  /**
   * This trace on the same fault as it was read again, without planning anew. What has been planned
   * holds as long as the numbers are the same; the words are those of the fault read again.
   *
   * @return empty when its causes, checks, answers or numbers have changed
   */
  public Optional<Trace> readAgain(Fault again) {
    return fault.plansLike(again)
        ? Optional.of(new Trace(again, policy, trail, situation, advice))
        : Optional.empty();
  }

  /** Works out now whatever this trace may be asked for, so that asking takes no time later. */
  public Trace workedOut() {
    next();
    alternatives();
    ranking();
    trail();
    contradiction();
    secondFault();
    return this;
  }

  /** The same trail on another reckoning of the same fault. */
  public Trace on(Fault reckonedOtherwise) {
    return of(reckonedOtherwise, policy, trail);
  }

  /** The rule by which steps are chosen. */
  public Policy policy() {
    return policy;
  }

  /** Where it stands, as numbers. */
  public Situation situation() {
    return situation.get();
  }

  /** What can be done next, as numbers. */
  public Advice advice() {
    return advice.get();
  }

  /** The fault that is being traced. */
  public Fault fault() {
    return fault;
  }

  /** Gives an answer, or changes the one given before. */
  public Trace answer(String check, String answer) {
    fault.answerNumber(fault.checkNumber(check), answer);
    return with(trail.with(new Answered(check, answer)));
  }

  /**
   * Notes that a check could not be told: no chance changes, and the check is not proposed again.
   * An answer given before is replaced.
   */
  public Trace cantTell(String check) {
    fault.checkNumber(check);
    return with(trail.with(new CouldNotTell(check)));
  }

  /**
   * Notes that what a check that comes first asks for has been made safe, as its page says. It
   * changes no chance; a check that was not answered counts as one that could not be told.
   */
  public Trace madeSafe(String check) {
    FaultCheck found = fault.comingFirst(check);
    Trail told = trail.isDone(found) ? trail : trail.with(new CouldNotTell(check));
    return with(told.with(new MadeSafe(check)));
  }

  /**
   * Takes back what was said of a check, and that it was made safe, as if it had never been said;
   * without effect when nothing was.
   */
  public Trace takeBack(String check) {
    fault.checkNumber(check);
    return with(trail.without(new CouldNotTell(check)).without(new MadeSafe(check)));
  }

  /** Takes back that it was made safe; without effect when it was not. */
  public Trace takeBackSafe(String check) {
    fault.checkNumber(check);
    return with(trail.without(new MadeSafe(check)));
  }

  /**
   * Notes that a cause's mend was tried and did not cure: its chance falls by what the mend usually
   * cures, and the mend is not proposed again. {@code something-else} has no mend.
   */
  public Trace mendTried(String cause) {
    return with(trail.with(new MendFailed(fault.mendable(cause))));
  }

  /** Takes back that a mend was tried; without effect when it was not. */
  public Trace takeBackMend(String cause) {
    return with(trail.without(new MendFailed(fault.mendable(cause))));
  }

  private Trace with(Trail changed) {
    return changed.equals(trail) ? this : of(fault, policy, changed);
  }

  /** The causes by falling chance, the page's order deciding between equals. */
  public List<RankedCause> ranking() {
    return ranking.get();
  }

  /** What to do next. What safety demands comes before anything else until it is passed. */
  public NextStep next() {
    return next.get();
  }

  /**
   * Whether everything that safety demands has been passed: answered so that it is safe, or made
   * safe. Until then there is one thing to do next, and nothing else.
   */
  public boolean isSafe() {
    return trail.unsafe(fault).isEmpty();
  }

  /**
   * Everything that can be done next, the best first, with what it then costs on average; only what
   * safety demands until that is passed.
   */
  public List<Alternative> alternatives() {
    return alternatives.get();
  }

  /**
   * How a step can turn out when it is done now, and what the trace is then: what each answer would
   * do. Works nothing out beyond the chances; ask the traces it leads to for more.
   *
   * @param step one of {@link #next} and {@link #alternatives}
   */
  public List<StepOutcome> outcomes(NextStep step) {
    return new StepOutcomes(this, situation.get().chances()).of(step);
  }

  /**
   * What the best plan found at once costs on average from here, in minutes, until mended or handed
   * to the yard. As every step is planned anew, following the proposals mostly costs less: on the
   * largest symptoms up to an eighth. {@link DiagnosticTree} reckons it more closely.
   */
  public double expectedMinutes() {
    return advice.get().best().expectedMinutes();
  }

  /**
   * Proven: whatever is done from here, it costs at least this many minutes on average. Where it
   * equals {@link #expectedMinutes} nothing can be better than what is proposed.
   */
  public double atLeastMinutes() {
    return advice.get().atLeast();
  }

  private NextSteps steps() {
    return new NextSteps(fault, trail, situation.get(), advice);
  }

  /** What has been done, in order. */
  public List<TrailEntry> trail() {
    return entries.get();
  }

  /** What the latest answer or mend changed, in a sentence; empty at the beginning. */
  public Optional<String> explain() {
    return new TrailLines(fault).latest(trail).map(TrailEntry::changed);
  }

  /** The answers given, by check; those that could not be told are left out. */
  public Map<String, String> answers() {
    return trail.answers();
  }

  /** Whether, and how, the answers contradict each other or the list of causes. */
  public Optional<Contradiction> contradiction() {
    return contradiction.get();
  }

  /**
   * Whether two things seem to be wrong at once: a mend that usually cures did not, or the answers
   * fit a pair of causes better than any single one. The trace itself goes on to look for one.
   */
  public Optional<SecondFault> secondFault() {
    return secondFault.get();
  }

  /** Whether nothing is left to check: the next step is a mend or the yard. */
  public boolean done() {
    NextStep next = next();
    return next instanceof DoMend || next instanceof CallYard;
  }

  /** Whether a cause of the list stands at {@link #SETTLED} or more. */
  public boolean settled() {
    double[] chances = situation.get().chances();
    return IntStream.range(0, chances.length - 1).anyMatch(i -> chances[i] >= SETTLED);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Trace that && trail.equals(that.trail) && fault.equals(that.fault);
  }

  @Override
  public int hashCode() {
    return Objects.hash(fault, trail);
  }
}
