package limberboard.effort;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import limberboard.effort.EffortModel.MendEffort;

/**
 * What it takes at least when one of two causes is there and it is not known which, on top of what
 * each costs when it is known.
 *
 * <p>Worked out as if these two were the only causes and all access were free: until the right mend
 * is made, a check costs its minutes under both, the wrong mend is in vain under the other, and the
 * yard costs what it costs more than the mend, and its search where it is told the wrong one. Each
 * check can be made once. The value is found backwards over the checks made, for a number of
 * chances of the first cause; between these it is taken on the straight line, which lies below,
 * since the least of strategies is a concave function of the chance. Where more checks tell the two
 * apart than can be kept account of, the less telling ones count as if they could be made again and
 * again.
 */
final class CausePair {
  /** How many shares of the first cause are worked out. */
  static final int SHARES = 3;

  private static final int PARTS = 40;
  private static final int SHARE_PARTS = PARTS / (SHARES + 1);
  private static final int MOST_CHECKS = 11;
  private static final int ROUNDS = 30;
  private static final double SAME = 1e-12;
  private static final double QUICK = 0.5;

  private final EffortModel model;
  private final double[] known;
  private final int one;
  private final int other;
  private final int[] checks;
  private final double[][] minutes;

  /**
   * Works it out.
   *
   * @param model what everything costs
   * @param known by cause, what it costs when it is known to be the one and nothing is open
   * @param one one of the causes
   * @param other another
   */
  CausePair(EffortModel model, double[] known, int one, int other) {
    this.model = model;
    this.known = known;
    this.one = one;
    this.other = other;
    double[] withoutChecks = new double[PARTS + 1];
    for (int at = 0; at <= PARTS; at++) {
      withoutChecks[at] = withoutChecks((double) at / PARTS, 1 - (double) at / PARTS);
    }
    double most = Arrays.stream(withoutChecks).max().orElseThrow();
    int[] telling = telling(most);
    this.checks = Arrays.copyOf(telling, Math.min(MOST_CHECKS, telling.length));
    this.minutes = new double[1 << checks.length][];
    solve(
        withoutChecks,
        Arrays.stream(telling)
            .mapToObj(check -> new PairCheck(model, check, one, other, PARTS))
            .toArray(PairCheck[]::new));
  }

  /** One of the two causes. */
  int one() {
    return one;
  }

  /** The other. */
  int other() {
    return other;
  }

  /** How much of the pair's weight the first cause has in a share, between 0 and 1. */
  static double ofOne(int share) {
    return (double) (share + 1) / (SHARES + 1);
  }

  /**
   * The minutes, times the pair's weight.
   *
   * @param share the share of the first cause, from 0
   * @param asked checks that cannot be made any more
   */
  double minutes(int share, BitSet asked) {
    int made = 0;
    for (int i = 0; i < checks.length; i++) {
      if (asked.get(checks[i])) {
        made |= 1 << i;
      }
    }
    return minutes[made][share];
  }

  private void solve(double[] withoutChecks, PairCheck[] telling) {
    double[][] values = new double[minutes.length][];
    for (int made = minutes.length - 1; made >= 0; made--) {
      double[] value = withoutChecks.clone();
      for (int i = 0; i < checks.length; i++) {
        if ((made & 1 << i) == 0) {
          telling[i].lower(value, values[made | 1 << i]);
        }
      }
      values[made] = again(value, telling);
      minutes[made] = new double[SHARES];
      for (int share = 0; share < SHARES; share++) {
        minutes[made][share] = values[made][SHARE_PARTS * (share + 1)];
      }
    }
  }

  /** With the checks that are not kept account of, from below, so that it stays below. */
  private double[] again(double[] value, PairCheck[] telling) {
    if (telling.length == checks.length) {
      return value;
    }
    double[] least = new double[PARTS + 1];
    for (int round = 0; round < ROUNDS; round++) {
      double[] now = value.clone();
      for (int i = checks.length; i < telling.length; i++) {
        telling[i].lower(now, least);
      }
      least = now;
    }
    return least;
  }

  /** The checks that may pay because they tell the two apart, the most telling a minute first. */
  private int[] telling(double most) {
    List<Integer> found = new ArrayList<>();
    for (int check = 0; check < model.checks().size(); check++) {
      if (model.checks().get(check).minutes() < most && apart(check) > SAME) {
        found.add(check);
      }
    }
    found.sort(
        Comparator.comparingDouble(
            check -> -apart(check) / (model.checks().get(check).minutes() + QUICK)));
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  /** How far the likelihoods of its answers lie apart, 0 to 2. */
  private double apart(int check) {
    double sum = 0;
    for (int answer = 0; answer < model.answers().answers(check); answer++) {
      double[] row = model.answers().row(check, answer);
      sum += Math.abs(row[one] - row[other]);
    }
    return sum;
  }

  private double withoutChecks(double first, double second) {
    double least = Math.min(named(one, first, other, second), named(other, second, one, first));
    if (canCure(one)) {
      least = Math.min(least, second * model.mends().get(one).minutes());
    }
    if (canCure(other)) {
      least = Math.min(least, first * model.mends().get(other).minutes());
    }
    return least;
  }

  private boolean canCure(int cause) {
    MendEffort mend = model.mends().get(cause);
    return mend.byOwner() && mend.cures() > 0;
  }

  /** What the yard costs more than the known cause when it is told this cause. */
  private double named(int told, double weight, int untold, double otherWeight) {
    double search = model.searchMinutes();
    double yard = model.yardMinutes();
    double right = yard + (model.mends().get(told).canBeNamed() ? 0 : search) - known[told];
    double wrong = yard + search - known[untold];
    return weight * right + otherWeight * wrong;
  }
}
