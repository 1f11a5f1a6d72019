package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;
import limberboard.effort.EffortModel.CheckEffort;

/**
 * Looks one step ahead: every open check is judged as if it were the last one, that is by its cost
 * and the {@link MendOrder order of mends} that would follow each of its answers, and compared with
 * making no more checks at all. The cheapest is advised.
 *
 * <p>This is the myopic choice of D. Heckerman, J. S. Breese and K. Rommelse, <i>Decision-theoretic
 * troubleshooting</i>, Communications of the ACM 38(3), 1995. Because an advice is only ever given
 * when it improves on a plan that can be carried out, following it costs on average no more than
 * that plan. One piece of advice takes time in proportion to checks × answers × causes × the
 * logarithm of causes.
 */
public final class OneStep implements Policy {
  private static final int MENDS_WEIGHED = 8;
  private static final double NO_DIFFERENCE = 1e-9;

  /** Makes the policy. */
  public OneStep() {}

  @Override
  public Advice advise(EffortModel model, Situation now) {
    LowerBound bound = new LowerBound(model);
    double atLeast =
        bound.minutes(now.chances(), bound.costs(now.open()), now.asked(), now.tried());
    return new Advice(new Weighing(model, now).options(), atLeast);
  }

  /** Options within a thousand-millionth of a minute of each other count as equal. */
  private static double rounded(Option option) {
    return Math.rint(option.expectedMinutes() / NO_DIFFERENCE);
  }

  /** One piece of advice in the making. */
  private static final class Weighing {
    private final EffortModel model;
    private final double[] chances;
    private final BitSet open;
    private final BitSet asked;
    private final BitSet tried;
    private final MendOrder mends;
    private final double noMoreChecks;
    private final double[] weights;

    Weighing(EffortModel model, Situation now) {
      this.model = model;
      this.chances = now.chances();
      this.open = now.open();
      this.asked = now.asked();
      this.tried = now.tried();
      this.mends = new MendOrder(model);
      this.weights = new double[chances.length];
      this.noMoreChecks = mends.minutes(chances, open, tried);
    }

    /** Safety's checks in the page's order, then everything by expected minutes. */
    List<Option> options() {
      List<Integer> worthTrying = mends.order().stream().limit(MENDS_WEIGHED).toList();
      List<Option> first = new ArrayList<>();
      List<Option> others = new ArrayList<>();
      for (int cause : worthTrying) {
        others.add(mend(cause));
      }
      double yard = model.handOver(chances);
      others.add(new Option(Action.YARD, 0, yard, yard, Grounds.EFFORT));
      for (int check = 0; check < model.checks().size(); check++) {
        if (!asked.get(check)) {
          (model.checks().get(check).comesFirst() ? first : others).add(check(check));
        }
      }
      others.sort(
          Comparator.comparingDouble(OneStep::rounded)
              .thenComparing(Option::action)
              .thenComparingInt(Option::index));
      return Stream.concat(first.stream(), others.stream()).toList();
    }

    private Option mend(int cause) {
      BitSet access = model.mends().get(cause).access();
      double cost = model.mends().get(cause).minutes() + model.accessMinutes(access, open);
      System.arraycopy(chances, 0, weights, 0, chances.length);
      weights[cause] *= 1 - model.mends().get(cause).cures();
      BitSet triedThen = (BitSet) tried.clone();
      triedThen.set(cause);
      BitSet openThen = model.mends().get(cause).shownAtOnce() ? openWith(access) : new BitSet();
      double rest = mends.minutes(weights, openThen, triedThen);
      return new Option(Action.MEND, cause, cost, cost + rest, Grounds.EFFORT);
    }

    private Option check(int check) {
      CheckEffort effort = model.checks().get(check);
      double access = model.accessMinutes(effort.access(), open);
      double cost = effort.minutes() + access;
      BitSet openThen = access > 0 ? openWith(effort.access()) : open;
      double told = 0;
      for (int answer = 0; answer < model.answers().answers(check); answer++) {
        double[] likelihoods = model.answers().row(check, answer);
        for (int cause = 0; cause < weights.length; cause++) {
          weights[cause] = chances[cause] * likelihoods[cause];
        }
        told += mends.minutes(weights, openThen, tried);
      }
      double untold = access > 0 ? mends.minutes(chances, openThen, tried) : noMoreChecks;
      double cantTell = effort.cantTell();
      double rest = (1 - cantTell) * told + cantTell * untold;
      Grounds grounds = effort.comesFirst() ? Grounds.SAFETY : Grounds.EFFORT;
      return new Option(Action.CHECK, check, cost, cost + rest, grounds);
    }

    private BitSet openWith(BitSet more) {
      BitSet all = (BitSet) open.clone();
      all.or(more);
      return all;
    }
  }
}
