package limberboard.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import limberboard.upkeep.plan.choice.ChoiceSearch;
import limberboard.upkeep.plan.choice.Chore;
import limberboard.upkeep.plan.choice.Chores;
import limberboard.upkeep.plan.choice.DayChoice;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a choice for the time there is takes, by the number of pieces of work that are due. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(1)
public class PlanBench {
  private static final int ACCESSES = 20;

  /** Pieces of work. */
  @Param({"60", "300", "1000"})
  public int works;

  /** Free days of four to eight hours. */
  @Param({"1", "6"})
  public int days;

  private Chores chores;

  /** Deals out the work. */
  @Setup
  public void deal() {
    Random random = new Random(11);
    List<Chore> all = new ArrayList<>();
    for (int i = 0; i < works; i++) {
      Set<Integer> after = i > 5 && random.nextInt(6) == 0 ? Set.of(random.nextInt(i)) : Set.of();
      Set<Integer> opens = random.nextInt(3) == 0 ? Set.of(random.nextInt(ACCESSES)) : Set.of();
      int minutes = 10 + random.nextInt(110);
      int stage = random.nextInt(3);
      all.add(new Chore(minutes, random.nextInt(5000), after, opens, 0, days - 1, stage));
    }
    List<Integer> time = new ArrayList<>();
    for (int day = 0; day < days; day++) {
      time.add(240 + random.nextInt(5) * 60);
    }
    chores = new Chores(all, Collections.nCopies(ACCESSES, 25), time);
  }

  /** The choice with its bound. */
  @Benchmark
  public DayChoice choose() {
    return ChoiceSearch.of(chores);
  }
}
