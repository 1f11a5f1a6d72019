package limberboard.effort;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;

/** Puts a published problem together; a cause without a mend is the yard's. */
final class SmallProblem {
  private final double[] weights;
  private final MendEffort[] mends;
  private final List<double[][]> tables = new ArrayList<>();
  private final List<CheckEffort> checks = new ArrayList<>();
  private double[] access = {};

  SmallProblem(double... weights) {
    this.weights = weights;
    this.mends = new MendEffort[weights.length];
    Arrays.fill(mends, new MendEffort(0, new BitSet(), 0, false));
  }

  SmallProblem access(double... minutes) {
    access = minutes;
    return this;
  }

  /** A sure mend of a cause, behind these accesses. */
  SmallProblem mend(int cause, double minutes, int... behind) {
    BitSet open = new BitSet();
    Arrays.stream(behind).forEach(open::set);
    mends[cause] = new MendEffort(minutes, open, 1, true);
    return this;
  }

  /** A check that always gives an answer; a row for each answer, a column for each cause. */
  SmallProblem check(double minutes, double[]... table) {
    return check(new CheckEffort(minutes, new BitSet(), 0, false), table);
  }

  SmallProblem check(CheckEffort effort, double[]... table) {
    tables.add(table);
    checks.add(effort);
    return this;
  }

  EffortModel model(double yardMinutes) {
    return model(yardMinutes, 0);
  }

  EffortModel model(double yardMinutes, double searchMinutes) {
    return new EffortModel(
        new AnswerModel(weights, tables),
        checks,
        List.of(mends),
        access,
        yardMinutes,
        searchMinutes);
  }
}
