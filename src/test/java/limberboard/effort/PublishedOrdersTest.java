package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Option;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The planner against published orders of jobs, which are orders of mends.
 *
 * <p>How jobs become a fault: trying mends one after the other, each for certain, takes on average
 * the sum over the tries of their minutes × the chance that the fault is still there. Written the
 * other way round, that is the sum over the causes of their chance × the minutes until their mend
 * is done. With chance as weight and minutes as processing time this is the sum of weighted
 * completion times on one machine, Σ <i>w</i>·<i>C</i>, and chance over minutes is the ratio of W.
 * E. Smith (Naval Research Logistics Quarterly 3, 1956), which schedulers call WSPT and searchers P
 * over C.
 *
 * <p>Jobs in a chain become accesses behind each other: opening the next takes the job's time, and
 * its mend, which needs everything before it open as well, takes none. Nothing is gained by leaving
 * a mend out that costs nothing, so that the chain's order is kept. These are the cost clusters
 * within cost clusters of Ottosen and Jensen (2010).
 */
class PublishedOrdersTest {
  private static final double NEVER = 1e6;
  private static final double CLOSE = 1e-6;

  /**
   * M. Pinedo, <i>Scheduling: Theory, Algorithms, and Systems</i>, example 3.1.5, jobs 1 to 7. From
   * memory; lecture notes on section 3.1 were read that give the same weights and times but for a
   * slip in the rows of jobs 4 and 5.
   */
  private static final double[] WEIGHTS = {6, 18, 12, 8, 8, 17, 18};

  private static final double[] TIMES = {3, 6, 6, 5, 4, 8, 10};

  /** The example's chains are 1 → 2 → 3 → 4 and 5 → 6 → 7, its answer 1, 2, 5, 6, 3, 7, 4. */
  @Test
  void ofJobsInChainsAreKept() {
    int[] answer = {0, 1, 4, 5, 2, 6, 3};
    SmallProblem problem = new SmallProblem(WEIGHTS).access(TIMES);
    for (int job = 0; job < 7; job++) {
      problem.mend(job, 0, IntStream.rangeClosed(job < 4 ? 0 : 4, job).toArray());
    }
    EffortModel model = problem.model(NEVER);

    assertThat(new Planner(Long.MAX_VALUE).advise(model, model.beginning()).gap())
        .isCloseTo(0, within(1e-12));
    assertThat(mends(model)).containsExactly(Arrays.stream(answer).boxed().toArray(Integer[]::new));
    assertThat(new Following(model, new Planner(Long.MAX_VALUE)).minutes())
        .isCloseTo(averageCompletion(answer), within(CLOSE));
    assertThat(averageCompletion(answer) * 87).isCloseTo(1967, within(CLOSE));
  }

  /** The same jobs without the chains: by falling ratio, jobs 2, 6, then 1, 3, 5 alike, 7, 4. */
  @Test
  void ofJobsByWeightOverTimeAreKept() {
    int[] answer = {1, 5, 0, 2, 4, 6, 3};
    SmallProblem problem = new SmallProblem(WEIGHTS);
    for (int job = 0; job < 7; job++) {
      problem.mend(job, TIMES[job]);
    }
    EffortModel model = problem.model(NEVER);

    Advice advice = new Planner(Long.MAX_VALUE).advise(model, model.beginning());

    assertThat(advice.best().expectedMinutes()).isCloseTo(averageCompletion(answer), within(CLOSE));
    assertThat(advice.gap()).isCloseTo(0, within(1e-12));
    assertThat(mends(model).subList(0, 2)).containsExactly(1, 5);
    assertThat(mends(model).subList(5, 7)).containsExactly(6, 3);
  }

  private static double averageCompletion(int[] order) {
    double time = 0;
    double sum = 0;
    for (int job : order) {
      time += TIMES[job];
      sum += WEIGHTS[job] * time;
    }
    return sum / Arrays.stream(WEIGHTS).sum();
  }

  /** What the planner mends in turn as long as nothing cures. */
  private static List<Integer> mends(EffortModel model) {
    List<Integer> mends = new ArrayList<>();
    Situation now = model.beginning();
    while (mends.size() < model.mends().size()) {
      Option best = new Planner(Long.MAX_VALUE).advise(model, now).best();
      assertThat(best.action()).isEqualTo(Action.MEND);
      mends.add(best.index());
      if (mends.size() < model.mends().size()) {
        now = failed(model, now, best.index());
      }
    }
    return mends;
  }

  private static Situation failed(EffortModel model, Situation now, int cause) {
    double[] weights = now.chances();
    weights[cause] = 0;
    BitSet open = now.open();
    open.or(model.mends().get(cause).access());
    BitSet tried = now.tried();
    tried.set(cause);
    return new Situation(Normalised.ofOne(weights), open, now.asked(), tried);
  }

  /**
   * An exercise on a machine with two possible causes of its breakdown, of chances <i>p</i> and 1 −
   * <i>p</i>, that cost <i>C₁</i> and <i>C₂</i> to look at: the first is looked at first when
   * <i>C₁</i> ÷ <i>p</i> is less than <i>C₂</i> ÷ (1 − <i>p</i>). What repairing costs does not
   * matter, being paid for the true cause in any order. The exercise and its answer were read; it
   * is S. Ross's (<i>A First Course in Probability</i>) from memory. Figures are ours.
   */
  @ParameterizedTest
  @CsvSource({"0.5, 10, 20", "0.5, 20, 10", "0.2, 10, 30", "0.2, 10, 50", "0.9, 80, 10"})
  void ofTwoPossibleCausesFollowCostOverChance(double p, double first, double second) {
    EffortModel model = new SmallProblem(p, 1 - p).mend(0, first).mend(1, second).model(NEVER);

    Option best = new Planner().advise(model, model.beginning()).best();

    boolean firstFirst = first / p < second / (1 - p);
    assertThat(best.index()).isEqualTo(firstFirst ? 0 : 1);
    assertThat(best.expectedMinutes())
        .isCloseTo(firstFirst ? first + (1 - p) * second : second + p * first, within(CLOSE));
  }
}
