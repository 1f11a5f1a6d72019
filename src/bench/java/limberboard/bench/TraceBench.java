package limberboard.bench;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import limberboard.effort.Advice;
import limberboard.effort.AnswerModel;
import limberboard.effort.EffortModel;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.Planner;
import limberboard.effort.Policy;
import limberboard.effort.Situation;
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

/** How long a trace thinks about its next step, by the number of causes, with as many checks. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TraceBench {
  private static final int ACCESS = 8;
  private static final int ANSWERS = 3;

  /** Causes, and as many checks. */
  @Param({"10", "50", "200", "1000"})
  public int causes;

  private final Policy policy = new Planner();
  private EffortModel model;
  private Situation beginning;

  /** Makes a fault of that size, the same every time. */
  @Setup
  public void make() {
    Random random = new Random(1990);
    List<double[][]> tables = new ArrayList<>();
    List<CheckEffort> checks = new ArrayList<>();
    List<MendEffort> mends = new ArrayList<>();
    double[] weights = new double[causes];
    for (int i = 0; i < causes; i++) {
      weights[i] = 1 + random.nextInt(10);
      tables.add(table(random));
      checks.add(new CheckEffort(1 + random.nextInt(30), access(random), 0.08, false));
      mends.add(
          new MendEffort(10 + random.nextInt(110), access(random), 0.93, random.nextInt(5) > 0));
    }
    double[] accessMinutes = random.doubles(ACCESS, 3, 60).toArray();
    model = new EffortModel(new AnswerModel(weights, tables), checks, mends, accessMinutes, 240, 60);
    beginning = model.beginning();
  }

  /** Every answer is typical of some causes and rare with the others. */
  private double[][] table(Random random) {
    double[][] table = new double[ANSWERS][causes];
    for (int cause = 0; cause < causes; cause++) {
      int typical = random.nextInt(ANSWERS);
      for (int answer = 0; answer < ANSWERS; answer++) {
        table[answer][cause] = answer == typical ? 0.84 : 0.08;
      }
    }
    return table;
  }

  private static BitSet access(Random random) {
    BitSet access = new BitSet();
    if (random.nextBoolean()) {
      access.set(random.nextInt(ACCESS));
    }
    return access;
  }

  /** One piece of advice from the beginning of a trace. */
  @Benchmark
  public Advice nextStep() {
    return policy.advise(model, beginning);
  }
}
