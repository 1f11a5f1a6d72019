package limberboard.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.effort.Advice;
import limberboard.effort.Advice.Option;
import limberboard.effort.OneStep;
import limberboard.effort.Planner;
import limberboard.effort.Policy;
import limberboard.effort.Situation;
import limberboard.library.page.Symptom;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.TrailStep.Answered;
import limberboard.trace.TrailStep.CouldNotTell;
import limberboard.trace.TrailStep.MadeSafe;
import limberboard.trace.TrailStep.MendFailed;
import limberboard.words.ChanceWords;

/**
 * Following one symptom on one boat to its cause. Immutable: every answer makes a new trace.
 * Everything follows from the answers alone, so their order does not matter and any of them can be
 * changed or taken back. Two traces of the same fault with the same trail are equal. Safe for use
 * by several threads.
 */
public final class Trace {
  /** A cause with at least this chance counts as found. */
  public static final double SETTLED = 0.8;

  private final Fault fault;
  private final Policy policy;
  private final Trail trail;
  private final Lazy<Situation> situation;
  private final Lazy<Advice> advice;
  private final Lazy<List<RankedCause>> ranking = new Lazy<>(this::ranked);
  private final Lazy<NextStep> next = new Lazy<>(this::nextStep);
  private final Lazy<List<Alternative>> alternatives = new Lazy<>(this::everyStep);
  private final Lazy<List<TrailEntry>> entries = new Lazy<>(this::everyEntry);
  private final Lazy<Optional<Contradiction>> contradiction = new Lazy<>(this::clash);
  private final Lazy<Optional<SecondFault>> secondFault = new Lazy<>(this::pair);

  private Trace(Fault fault, Policy policy, Trail trail) {
    this.fault = fault;
    this.policy = policy;
    this.trail = trail;
    this.situation = new Lazy<>(() -> trail.situation(fault));
    this.advice = new Lazy<>(() -> policy.advise(fault.model(), situation.get()));
  }

  /** The same trail on a fault that plans like the one before: what was planned stays. */
  private Trace(Fault fault, Trace before) {
    this.fault = fault;
    this.policy = before.policy;
    this.trail = before.trail;
    this.situation = before.situation;
    this.advice = before.advice;
  }

  /**
   * Begins a trace that looks for the best strategy as far as that is done {@link Planner at once}.
   */
  public static Trace begin(Fault fault) {
    return begin(fault, new Planner());
  }

  /** Begins a trace that chooses its steps by a policy of one's own. */
  public static Trace begin(Fault fault, Policy policy) {
    return new Trace(fault, policy, Trail.EMPTY);
  }

  /**
   * Begins a trace as {@link #begin(Fault)} does, for somebody who wants to know of its planning.
   *
   * @param planning called each time a step is about to be planned, on the thread that plans
   */
  public static Trace begin(Fault fault, Runnable planning) {
    Policy planner = new Planner();
    return begin(
        fault,
        (model, now) -> {
          planning.run();
          return planner.advise(model, now);
        });
  }

  /**
   * This trace on the same fault as it was read again, without planning anew. What has been planned
   * holds as long as the numbers are the same; the words are those of the fault read again.
   *
   * @return empty when its causes, checks, answers or numbers have changed
   */
  public Optional<Trace> readAgain(Fault again) {
    return fault.plansLike(again) ? Optional.of(new Trace(again, this)) : Optional.empty();
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
    return new Trace(reckonedOtherwise, policy, trail);
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

  /**
   * Gives an answer, or changes the one given before.
   *
   * @throws IllegalArgumentException when there is no such check or answer on this boat
   */
  public Trace answer(String check, String answer) {
    fault.answerNumber(fault.checkNumber(check), answer);
    return with(trail.with(new Answered(check, answer)));
  }

  /**
   * Notes that a check could not be told: no chance changes, and the check is not proposed again.
   * An answer given before is replaced.
   *
   * @throws IllegalArgumentException when there is no such check on this boat
   */
  public Trace cantTell(String check) {
    fault.checkNumber(check);
    return with(trail.with(new CouldNotTell(check)));
  }

  /**
   * Notes that what a check that comes first asks for has been made safe, as its page says. It
   * changes no chance; a check that was not answered counts as one that could not be told.
   *
   * @throws IllegalArgumentException when there is no such check on this boat, or it does not come
   *     first
   */
  public Trace madeSafe(String check) {
    FaultCheck found = fault.checks().get(fault.checkNumber(check));
    if (!found.check().comesFirst()) {
      throw new IllegalArgumentException(
          "\"" + check + "\" is no check that comes first for safety");
    }
    Trail told = trail.isDone(found) ? trail : trail.with(new CouldNotTell(check));
    return with(told.with(new MadeSafe(check)));
  }

  /**
   * Takes back what was said of a check, and that it was made safe, as if it had never been said;
   * without effect when nothing was.
   *
   * @throws IllegalArgumentException when there is no such check on this boat
   */
  public Trace takeBack(String check) {
    fault.checkNumber(check);
    return with(trail.without(new CouldNotTell(check)).without(new MadeSafe(check)));
  }

  /**
   * Takes back that it was made safe; without effect when it was not.
   *
   * @throws IllegalArgumentException when there is no such check on this boat
   */
  public Trace takeBackSafe(String check) {
    fault.checkNumber(check);
    return with(trail.without(new MadeSafe(check)));
  }

  /**
   * Notes that a cause's mend was tried and did not cure: its chance falls by what the mend usually
   * cures, and the mend is not proposed again.
   *
   * @throws IllegalArgumentException when this boat cannot have the cause, or it is {@code
   *     something-else}, which has no mend
   */
  public Trace mendTried(String cause) {
    return with(trail.with(new MendFailed(mendable(cause))));
  }

  /**
   * Takes back that a mend was tried; without effect when it was not.
   *
   * @throws IllegalArgumentException as for {@link #mendTried}
   */
  public Trace takeBackMend(String cause) {
    return with(trail.without(new MendFailed(mendable(cause))));
  }

  private String mendable(String cause) {
    if (fault.causes().get(fault.causeNumber(cause)).isSomethingElse()) {
      throw new IllegalArgumentException(
          "\"" + Symptom.SOMETHING_ELSE + "\" has no mend; name a cause of the list");
    }
    return cause;
  }

  private Trace with(Trail changed) {
    return changed.equals(trail) ? this : new Trace(fault, policy, changed);
  }

  /** The causes by falling chance, the page's order deciding between equals. */
  public List<RankedCause> ranking() {
    return ranking.get();
  }

  private List<RankedCause> ranked() {
    double[] now = situation.get().chances();
    double[] before = trail.latest().map(step -> trail.without(step).chances(fault)).orElse(now);
    return IntStream.range(0, now.length)
        .mapToObj(
            i ->
                new RankedCause(
                    fault.causes().get(i), now[i], before[i], ChanceWords.listed(now[i])))
        .sorted(Comparator.comparingDouble(RankedCause::chance).reversed())
        .toList();
  }

  /** What to do next. What safety demands comes before anything else until it is passed. */
  public NextStep next() {
    return next.get();
  }

  private NextStep nextStep() {
    return toMakeSafe().orElseGet(() -> reasons().step(advice.get().best()));
  }

  private Optional<NextStep> toMakeSafe() {
    return trail.unsafe(fault).filter(trail::isDone).map(Reasons::makeSafe);
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

  private List<Alternative> everyStep() {
    if (!isSafe()) {
      return List.of(new Alternative(next(), expectedMinutes()));
    }
    Reasons reasons = reasons();
    Option best = advice.get().best();
    return advice.get().options().stream()
        .map(
            option ->
                new Alternative(
                    option.equals(best) ? reasons.step(option) : reasons.instead(option, best),
                    option.expectedMinutes()))
        .toList();
  }

  /**
   * Something that can be done next.
   *
   * @param step the step
   * @param expectedMinutes what everything costs on average when this is done next, until the fault
   *     is mended or handed to the yard
   */
  public record Alternative(NextStep step, double expectedMinutes) {}

  /**
   * How a step can turn out when it is done now, and what the trace is then: what each answer would
   * do. Works nothing out beyond the chances; ask the traces it leads to for more.
   *
   * @param step one of {@link #next} and {@link #alternatives}
   */
  public List<StepOutcome> outcomes(NextStep step) {
    return new StepOutcomes(this, situation.get().chances()).of(step);
  }

  private Reasons reasons() {
    return new Reasons(fault, situation.get().chances(), trail.opened(fault));
  }

  /**
   * What the best plan found at once costs on average from here, in minutes, until mended or handed
   * to the yard. As every step is planned anew, following the proposals mostly costs less: on the
   * largest symptoms up to an eighth. {@link DiagnosticTree} reckons it more closely.
   */
  public double expectedMinutes() {
    return advice.get().best().expectedMinutes();
  }

  /** The same, reckoned quickly by looking one step ahead: seldom less, often more. */
  double roughMinutes() {
    return new OneStep().advise(fault.model(), situation.get()).best().expectedMinutes();
  }

  /**
   * Proven: whatever is done from here, it costs at least this many minutes on average. Where it
   * equals {@link #expectedMinutes} nothing can be better than what is proposed.
   */
  public double atLeastMinutes() {
    return advice.get().atLeast();
  }

  /** What has been done, in order. */
  public List<TrailEntry> trail() {
    return entries.get();
  }

  private List<TrailEntry> everyEntry() {
    TrailLines lines = new TrailLines(fault);
    List<TrailEntry> entries = new ArrayList<>();
    double[] before = Trail.EMPTY.chances(fault);
    for (int i = 0; i < trail.steps().size(); i++) {
      double[] after = trail.first(i + 1).chances(fault);
      entries.add(lines.entry(trail.steps().get(i), before, after));
      before = after;
    }
    return List.copyOf(entries);
  }

  /** What the latest answer or mend changed, in a sentence; empty at the beginning. */
  public Optional<String> explain() {
    return trail
        .latest()
        .map(
            step ->
                new TrailLines(fault)
                    .entry(step, trail.without(step).chances(fault), situation.get().chances())
                    .changed());
  }

  /** The answers given, by check; those that could not be told are left out. */
  public Map<String, String> answers() {
    return trail.answers();
  }

  /** Whether, and how, the answers contradict each other or the list of causes. */
  public Optional<Contradiction> contradiction() {
    return contradiction.get();
  }

  private Optional<Contradiction> clash() {
    return new Clash(fault, trail.answerNumbers(fault)).found();
  }

  /**
   * Whether two things seem to be wrong at once: a mend that usually cures did not, or the answers
   * fit a pair of causes better than any single one. The trace itself goes on to look for one.
   */
  public Optional<SecondFault> secondFault() {
    return secondFault.get();
  }

  private Optional<SecondFault> pair() {
    return new TwoFaults(fault, trail.answerNumbers(fault), trail.failed(fault)).found();
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
