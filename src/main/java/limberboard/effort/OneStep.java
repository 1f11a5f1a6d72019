package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
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

  /** Makes the policy. */
  public OneStep() {}

  @Override
  public Advice advise(EffortModel model, Situation now) {
    LowerBound bound = new LowerBound(model);
    double atLeast =
        bound.minutes(now.chances(), bound.costs(now.open()), now.asked(), now.tried());
    return Advice.inOrder(options(model, now), atLeast);
  }

  /** Everything that can be done, in no particular order. */
  static List<Option> options(EffortModel model, Situation now) {
    return new Weighing(model, now).options();
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

    /** The mends worth trying, the yard, and every check that has not been made. */
    List<Option> options() {
      List<Option> options = new ArrayList<>();
      for (int cause : mends.order().stream().limit(MENDS_WEIGHED).toList()) {
        options.add(mend(cause));
      }
      double yard = model.handOver(chances);
      options.add(new Option(Action.YARD, 0, yard, yard, Grounds.EFFORT));
      for (int check = 0; check < model.checks().size(); check++) {
        if (!asked.get(check)) {
          options.add(check(check));
        }
      }
      return options;
    }

    private Option mend(int cause) {
      double cost = model.mendMinutes(cause, open);
      System.arraycopy(chances, 0, weights, 0, chances.length);
      weights[cause] *= 1 - model.mends().get(cause).cures();
      BitSet triedThen = (BitSet) tried.clone();
      triedThen.set(cause);
      double rest = mends.minutes(weights, model.openAfterMend(cause, open), triedThen);
      return new Option(Action.MEND, cause, cost, cost + rest, Grounds.EFFORT);
    }

    private Option check(int check) {
      CheckEffort effort = model.checks().get(check);
      double access = model.accessMinutes(effort.access(), open);
      double cost = effort.minutes() + access;
      BitSet openThen = access > 0 ? model.openAfterCheck(check, open) : open;
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
  }
}
