package limberboard.effort;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.effort.EffortModel.MendEffort;

/**
 * What it takes at least when one of two causes is there and it is not known which, on top of what
 * each costs when it is known.
 *
 * <p>Worked out as if these two were the only causes and all access were free: a check costs its
 * minutes under both, a mend is in vain under the other cause and may fail under its own, and the
 * yard costs what it costs more than the known cause, and its search where it is told the wrong
 * one. Each check and each mend can be made once; a mend that failed leaves open whether it was the
 * wrong one. The value is found backwards over the checks and mends made, for a number of chances
 * of the first cause; between these it is taken on the straight line, which lies below, since the
 * least of strategies is a concave function of the chance. Where more checks tell the two apart
 * than can be kept account of, the less telling ones count as if they could be made again and
 * again.
 */
final class CausePair {
  private static final int PARTS = 40;
  private static final int[] SHARE_PARTS = {4, 10, 20, 30, 36};

  /** How many shares of the first cause are worked out. */
  static final int SHARES = SHARE_PARTS.length;

  private static final int MOST_CHECKS = 9;
  private static final int ROUNDS = 30;
  private static final int ONE_TRIED = 1;
  private static final int OTHER_TRIED = 2;

  /** How many ways there are for mends of the two to have failed. */
  static final int MENDS = 4;

  private static final double SAME = 1e-12;
  private static final double QUICK = 0.5;

  private final EffortModel model;
  private final double[] known;
  private final int one;
  private final int other;
  private final int[] checks;
  private final double[][][] minutes;

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
    double[][] yard = new double[MENDS][];
    for (int tried = 0; tried < MENDS; tried++) {
      yard[tried] = yard(tried);
    }
    int[] telling = telling(Arrays.stream(yard[0]).max().orElseThrow());
    this.checks = Arrays.copyOf(telling, Math.min(MOST_CHECKS, telling.length));
    this.minutes = new double[1 << checks.length][MENDS][];
    PairStep[] steps =
        Arrays.stream(telling)
            .mapToObj(check -> PairStep.check(model, check, one, other, PARTS))
            .toArray(PairStep[]::new);
    solve(yard, steps);
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
    return (double) SHARE_PARTS[share] / PARTS;
  }

  /** Which of the two mends have failed, as a number from 0 to {@link #MENDS}. */
  static int mends(boolean oneFailed, boolean otherFailed) {
    return (oneFailed ? ONE_TRIED : 0) | (otherFailed ? OTHER_TRIED : 0);
  }

  /**
   * The minutes, times the pair's weight, by which of the two {@link #mends} have failed.
   *
   * @param share the share of the first cause, from 0
   * @param asked checks that cannot be made any more
   */
  double[] minutes(int share, BitSet asked) {
    int made = 0;
    for (int i = 0; i < checks.length; i++) {
      if (asked.get(checks[i])) {
        made |= 1 << i;
      }
    }
    double[][] byMends = minutes[made];
    return Arrays.stream(byMends).mapToDouble(each -> each[share]).toArray();
  }

  private void solve(double[][] yard, PairStep[] telling) {
    Optional<PairStep> mendOne = mend(one).map(each -> mendOfOne(each.minutes(), each.cures()));
    Optional<PairStep> mendOther =
        mend(other).map(each -> mendOfOther(each.minutes(), each.cures()));
    double[][][] values = new double[minutes.length][MENDS][];
    for (int made = minutes.length - 1; made >= 0; made--) {
      for (int tried = MENDS - 1; tried >= 0; tried--) {
        double[] value = yard[tried].clone();
        if ((tried & ONE_TRIED) == 0 && mendOne.isPresent()) {
          mendOne.get().lower(value, values[made][tried | ONE_TRIED]);
        }
        if ((tried & OTHER_TRIED) == 0 && mendOther.isPresent()) {
          mendOther.get().lower(value, values[made][tried | OTHER_TRIED]);
        }
        for (int i = 0; i < checks.length; i++) {
          if ((made & 1 << i) == 0) {
            telling[i].lower(value, values[made | 1 << i][tried]);
          }
        }
        double[] least = again(value, telling);
        values[made][tried] = least;
        minutes[made][tried] = Arrays.stream(SHARE_PARTS).mapToDouble(at -> least[at]).toArray();
      }
    }
  }

  /** With the checks that are not kept account of, from below, so that it stays below. */
  private double[] again(double[] value, PairStep[] telling) {
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

  private Optional<MendEffort> mend(int cause) {
    MendEffort mend = model.mends().get(cause);
    return mend.canCure() ? Optional.of(mend) : Optional.empty();
  }

  private PairStep mendOfOne(double inVain, double cures) {
    return PairStep.mendOfOne(cures, onTop(one), inVain, PARTS);
  }

  private PairStep mendOfOther(double inVain, double cures) {
    return PairStep.mendOfOther(cures, inVain, onTop(other), PARTS);
  }

  /**
   * What a cause's own mend costs more than the yard told of it at once, the yard after it too,
   * with all access open: where it costs less than that, a known cause is mended, and this is it.
   */
  private double onTop(int cause) {
    MendEffort mend = model.mends().get(cause);
    double yard = model.handOver(cause);
    return Math.max(0, mend.minutes() + (1 - mend.cures()) * yard - yard);
  }

  /** By part, what the yard costs more than the causes when they are known. */
  private double[] yard(int tried) {
    double ofOne = (tried & ONE_TRIED) == 0 ? known[one] : model.handOver(one);
    double ofOther = (tried & OTHER_TRIED) == 0 ? known[other] : model.handOver(other);
    double searched = model.yardMinutes() + model.searchMinutes();
    double[] least = new double[PARTS + 1];
    for (int at = 0; at <= PARTS; at++) {
      double first = (double) at / PARTS;
      double known = first * ofOne + (1 - first) * ofOther;
      double toldOne = first * model.handOver(one) + (1 - first) * searched;
      double toldOther = first * searched + (1 - first) * model.handOver(other);
      least[at] = Math.max(0, Math.min(toldOne, toldOther) - known);
    }
    return least;
  }
}
