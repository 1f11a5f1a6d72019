package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import limberboard.trace.TrailStep.Answered;
import limberboard.trace.TrailStep.CouldNotTell;
import limberboard.trace.TrailStep.MadeSafe;
import limberboard.trace.TrailStep.MendFailed;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What holds for every trace of every page. */
class TracePropertiesTest {
  private static final double EXACT = 1e-12;

  @Property(tries = 200, seed = "1763", edgeCases = EdgeCasesMode.NONE)
  void chancesAreProbabilities(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(max = 12) int causes,
      @ForAll @IntRange(max = 8) int checks,
      @ForAll @IntRange(max = 12) int steps) {
    RandomFaults random = new RandomFaults(seed);
    Trace trace = random.trace(random.fault(causes, checks), steps);
    List<Double> chances = trace.ranking().stream().map(RankedCause::chance).toList();
    assertThat(chances).hasSize(causes + 1).allMatch(chance -> chance >= 0 && chance <= 1);
    assertThat(chances.stream().mapToDouble(Double::doubleValue).sum()).isCloseTo(1, within(EXACT));
    assertThat(chances.get(0)).isEqualTo(chances.stream().max(Double::compare).orElseThrow());
    assertThat(trace.expectedMinutes()).isFinite().isNotNegative();
  }

  @Property(tries = 200, seed = "1764", edgeCases = EdgeCasesMode.NONE)
  void theOrderOfAnsweringDoesNotMatter(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(max = 12) int steps) {
    RandomFaults random = new RandomFaults(seed);
    Trace trace = random.trace(random.fault(8, 6), steps);
    Trace other = Trace.begin(trace.fault());
    for (TrailStep step : random.shuffled(trace.trail().stream().map(TrailEntry::step).toList())) {
      other = again(other, step);
    }
    assertThat(chances(other)).isEqualTo(chances(trace));
    assertThat(other.next()).isEqualTo(trace.next());
    assertThat(other.expectedMinutes()).isEqualTo(trace.expectedMinutes());
  }

  private static Trace again(Trace trace, TrailStep step) {
    if (step instanceof Answered answered) {
      return trace.answer(answered.id(), answered.answer());
    }
    if (step instanceof MadeSafe) {
      return trace.madeSafe(step.id());
    }
    return step instanceof MendFailed ? trace.mendTried(step.id()) : trace.cantTell(step.id());
  }

  private static List<Double> chances(Trace trace) {
    return trace.fault().causes().stream()
        .map(
            cause ->
                trace.ranking().stream()
                    .filter(ranked -> ranked.cause().equals(cause))
                    .findFirst()
                    .orElseThrow()
                    .chance())
        .toList();
  }

  @Property(tries = 200, seed = "1765", edgeCases = EdgeCasesMode.NONE)
  void takingBackGivesTheFormerStateAgain(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(max = 8) int steps) {
    RandomFaults random = new RandomFaults(seed);
    Trace before = random.trace(random.fault(6, 5), steps);
    FaultCheck check = random.anyOf(before.fault().checks());
    boolean asked =
        before.trail().stream()
            .map(TrailEntry::step)
            .anyMatch(step -> !(step instanceof MendFailed) && step.id().equals(check.id()));
    Trace after = before.answer(check.id(), random.anyOf(check.answers())).takeBack(check.id());
    if (asked) {
      assertThat(after).isEqualTo(before.takeBack(check.id()));
    } else {
      assertThat(after.trail()).isEqualTo(before.trail());
      assertThat(chances(after)).isEqualTo(chances(before));
      assertThat(after.next()).isEqualTo(before.next());
    }
  }

  @Property(tries = 200, seed = "1766", edgeCases = EdgeCasesMode.NONE)
  void cantTellChangesNoChance(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(max = 8) int steps) {
    RandomFaults random = new RandomFaults(seed);
    Trace trace = random.trace(random.fault(6, 5), steps);
    String check = random.anyOf(trace.fault().checks()).id();
    Trace untold = trace.takeBack(check).cantTell(check);
    assertThat(chances(untold)).isEqualTo(chances(trace.takeBack(check)));
    assertThat(untold.alternatives())
        .noneMatch(
            alternative ->
                alternative.step() instanceof NextStep.DoCheck asked && asked.id().equals(check));
    assertThat(untold.trail()).extracting(TrailEntry::step).contains(new CouldNotTell(check));
  }

  @Property(tries = 200, seed = "1767", edgeCases = EdgeCasesMode.NONE)
  void somethingElseIsNeverRuledOut(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(max = 12) int steps) {
    RandomFaults random = new RandomFaults(seed);
    Trace trace = random.trace(random.fault(8, 6), steps);
    List<Double> chances = chances(trace);
    assertThat(chances.get(chances.size() - 1)).isPositive();
  }

  @Property(tries = 100, seed = "1768", edgeCases = EdgeCasesMode.NONE)
  void followingTheAdviceAlwaysComesToAnEnd(@ForAll @LongRange(min = 0) long seed) {
    RandomFaults random = new RandomFaults(seed);
    Trace trace = Trace.begin(random.fault(6, 5));
    int steps = 0;
    while (!(trace.next() instanceof NextStep.CallYard)) {
      NextStep next = trace.next();
      if (next instanceof NextStep.DoCheck ask) {
        trace = trace.answer(ask.id(), random.anyOf(ask.check().answers()));
      } else if (next instanceof NextStep.DoMend mend) {
        trace = trace.mendTried(mend.cause().id());
      } else if (next instanceof NextStep.MakeSafe safe) {
        trace = trace.madeSafe(safe.id());
      }
      steps++;
    }
    assertThat(steps).isLessThanOrEqualTo(6 + 5 + 5);
    assertThat(trace.done()).isTrue();
  }
}
