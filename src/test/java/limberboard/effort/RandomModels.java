package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;

/** Random numbers of the shape of a fault, the same for the same seed. */
final class RandomModels {
  private final Random random;

  RandomModels(long seed) {
    this.random = new Random(seed);
  }

  /** Which mends and checks need which access. */
  enum AccessShape {
    /** No access at all. */
    NONE,
    /** Each step needs one of the accesses, or none. */
    ONE_EACH,
    /** Each step needs any set of accesses. */
    ANY
  }

  EffortModel model(int causes, int checks, int access, AccessShape shape) {
    double[] priors = random.doubles(causes, 0.01, 1).toArray();
    List<double[][]> tables = new ArrayList<>();
    List<CheckEffort> efforts = new ArrayList<>();
    for (int i = 0; i < checks; i++) {
      tables.add(table(causes, 2 + random.nextInt(2)));
      efforts.add(
          new CheckEffort(between(1, 30), needed(access, shape), random.nextDouble() * 0.3, false));
    }
    List<MendEffort> mends = new ArrayList<>();
    for (int i = 0; i < causes; i++) {
      boolean byOwner = i < causes - 1 && random.nextInt(5) > 0;
      mends.add(new MendEffort(between(5, 120), needed(access, shape), between(0.5, 1), byOwner));
    }
    double[] minutes = DoubleStream.generate(() -> between(2, 90)).limit(access).toArray();
    return new EffortModel(
        new AnswerModel(priors, tables), efforts, mends, minutes, between(200, 1_500));
  }

  /**
   * A model with everything that a page can say: mends whose cure shows later, causes without a
   * name, a yard that has to search, sure mends, and sometimes a check that comes first. The yard
   * may be cheap or dear.
   */
  EffortModel fullModel(int causes, int checks, int access, AccessShape shape) {
    EffortModel plain = model(causes, checks, access, shape);
    List<CheckEffort> efforts = new ArrayList<>();
    int first = random.nextInt(4) == 0 && checks > 0 ? random.nextInt(checks) : -1;
    for (int i = 0; i < checks; i++) {
      CheckEffort effort = plain.checks().get(i);
      double cantTell = random.nextBoolean() ? 0 : effort.cantTell();
      efforts.add(new CheckEffort(effort.minutes(), effort.access(), cantTell, i == first));
    }
    List<MendEffort> mends = new ArrayList<>();
    for (MendEffort mend : plain.mends()) {
      mends.add(
          new MendEffort(
              mend.minutes(),
              mend.access(),
              random.nextInt(3) == 0 ? 1 : mend.cures(),
              mend.byOwner(),
              random.nextInt(3) > 0,
              random.nextInt(4) > 0));
    }
    double[] minutes = DoubleStream.generate(() -> between(2, 90)).limit(access).toArray();
    double search = random.nextBoolean() ? 0 : between(5, 300);
    return new EffortModel(
        plain.answers(), efforts, mends, minutes, Math.pow(10, between(1, 3)), search);
  }

  /** Somewhere in the middle of a trace: some asked, some tried, some open, any chances. */
  Situation situation(EffortModel model) {
    double[] weights =
        DoubleStream.generate(() -> random.nextInt(4) == 0 ? 0 : random.nextDouble())
            .limit(model.mends().size())
            .toArray();
    weights[random.nextInt(weights.length)] += 0.1;
    return new Situation(
        Normalised.ofOne(weights), some(4), some(model.checks().size()), some(weights.length));
  }

  private BitSet some(int of) {
    BitSet some = new BitSet();
    for (int i = 0; i < of; i++) {
      some.set(i, random.nextInt(3) == 0);
    }
    return some;
  }

  private double[][] table(int causes, int answers) {
    double[][] table = new double[answers][causes];
    for (int cause = 0; cause < causes; cause++) {
      double[] weights = new double[answers];
      for (int answer = 0; answer < answers; answer++) {
        weights[answer] = random.nextInt(4) == 0 ? 0 : Math.pow(random.nextDouble(), 3);
      }
      weights[random.nextInt(answers)] += 0.5;
      double[] shares = Normalised.ofOne(weights);
      for (int answer = 0; answer < answers; answer++) {
        table[answer][cause] = shares[answer];
      }
    }
    return table;
  }

  private BitSet needed(int access, AccessShape shape) {
    BitSet needed = new BitSet();
    if (shape == AccessShape.ONE_EACH && access > 0) {
      int one = random.nextInt(access + 1);
      if (one < access) {
        needed.set(one);
      }
    } else if (shape == AccessShape.ANY) {
      for (int i = 0; i < access; i++) {
        needed.set(i, random.nextInt(3) == 0);
      }
    }
    return needed;
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }
}
