package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import limberboard.effort.Advice.Action;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.LowerBound.Costs;

/**
 * What a check or a mend made at a {@link Node} can lead to.
 *
 * @param model what everything costs
 * @param lower knows what everything costs with what is then open
 */
record Effects(EffortModel model, LowerBound lower) {

  /**
   * One way a move can turn out.
   *
   * @param weights the causes' chances at the node, each times how likely it makes this
   * @param share times which the weights' sum is the chance of it
   * @param costs what everything costs with what is then open
   * @param asked checks made by then
   * @param tried causes mended in vain by then
   */
  record Effect(double[] weights, double share, Costs costs, BitSet asked, BitSet tried) {
    double sum() {
      double sum = 0;
      for (double weight : weights) {
        sum += weight;
      }
      return sum;
    }
  }

  /** The ways a check or mend can turn out, but for the one that ends the trace. */
  List<Effect> of(Node node, Action action, int index) {
    return action == Action.MEND ? List.of(ofMend(node, index)) : ofCheck(node, index);
  }

  private Effect ofMend(Node node, int cause) {
    MendEffort mend = model.mends().get(cause);
    double[] weights = node.chances.clone();
    weights[cause] *= 1 - mend.cures();
    Costs costs = lower.costs(model.openAfterMend(cause, node.costs.open()));
    return new Effect(weights, 1, costs, node.asked, with(node.tried, cause));
  }

  private List<Effect> ofCheck(Node node, int check) {
    CheckEffort effort = model.checks().get(check);
    AnswerModel answers = model.answers();
    Costs costs = lower.costs(model.openAfterCheck(check, node.costs.open()));
    BitSet asked = with(node.asked, check);
    double told = 1 - effort.cantTell();
    List<Effect> effects = new ArrayList<>();
    for (int answer = 0; told > 0 && answer < answers.answers(check); answer++) {
      double[] row = answers.row(check, answer);
      double[] weights = new double[row.length];
      for (int cause = 0; cause < row.length; cause++) {
        weights[cause] = node.chances[cause] * row[cause];
      }
      effects.add(new Effect(weights, told, costs, asked, node.tried));
    }
    if (effort.cantTell() > 0) {
      effects.add(new Effect(node.chances, effort.cantTell(), costs, asked, node.tried));
    }
    return effects;
  }

  private static BitSet with(BitSet set, int number) {
    BitSet more = (BitSet) set.clone();
    more.set(number);
    return more;
  }
}
