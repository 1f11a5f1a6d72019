package limberboard.effort;

import java.util.ArrayList;
import java.util.List;
import limberboard.effort.Advice.Action;
import limberboard.effort.Effects.Effect;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.Node.Move;

/**
 * Finds the moves of a {@link Node} that may be the best there, each with the least it can cost.
 *
 * @param model what everything costs
 * @param lower what nothing can go below
 * @param effects what moves lead to
 */
record MoveFinder(EffortModel model, LowerBound lower, Effects effects) {
  /** Chances below this are taken for none. */
  static final double IMPOSSIBLE = 1e-12;

  /**
   * The moves: only the check that safety demands, where there is one; otherwise the yard, every
   * mend that can cure, and every check that tells something and does not cost more than a known
   * cause would save.
   */
  List<Move> of(Node node) {
    int demanded = model.demanded(node.asked);
    if (demanded >= 0) {
      return List.of(check(node, demanded));
    }
    List<Move> moves = new ArrayList<>();
    moves.add(yard(node));
    for (int cause = 0; cause < node.chances.length; cause++) {
      if (canCure(node, cause)) {
        moves.add(bounded(node, new Move(Action.MEND, cause, node.costs.mends()[cause])));
      }
    }
    double spare = node.atMost - lower.ifKnown(node.chances, node.costs, node.tried);
    for (int check = 0; check < node.costs.checks().length; check++) {
      if (!node.asked.get(check)
          && model.checks().get(check).minutes() < spare
          && tells(node.chances, check)) {
        moves.add(check(node, check));
      }
    }
    return moves;
  }

  private Move yard(Node node) {
    Move yard = new Move(Action.YARD, 0, model.handOver(node.chances));
    yard.atLeast = yard.minutes;
    yard.atMost = yard.minutes;
    return yard;
  }

  private Move check(Node node, int check) {
    return bounded(node, new Move(Action.CHECK, check, node.costs.checks()[check]));
  }

  private Move bounded(Node node, Move move) {
    move.atLeast = move.minutes;
    for (Effect effect : effects.of(node, move.action, move.index)) {
      move.atLeast +=
          effect.share()
              * lower.minutes(effect.weights(), effect.costs(), effect.asked(), effect.tried());
    }
    return move;
  }

  private boolean canCure(Node node, int cause) {
    MendEffort mend = model.mends().get(cause);
    return mend.canCure()
        && !node.tried.get(cause)
        && node.chances[cause] * mend.cures() > IMPOSSIBLE;
  }

  /** Whether a check's answers are not equally likely under all causes that are left. */
  private boolean tells(double[] chances, int check) {
    for (int answer = 0; answer < model.answers().answers(check); answer++) {
      double[] row = model.answers().row(check, answer);
      double least = 2;
      double most = -1;
      for (int cause = 0; cause < chances.length; cause++) {
        if (chances[cause] > IMPOSSIBLE) {
          least = Math.min(least, row[cause]);
          most = Math.max(most, row[cause]);
        }
      }
      if (most - least > IMPOSSIBLE) {
        return true;
      }
    }
    return false;
  }
}
