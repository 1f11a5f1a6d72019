package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.effort.Advice.Action;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.LowerBound.Costs;
import limberboard.effort.Node.Move;

/**
 * The best strategy from a situation on, closed in from both sides.
 *
 * <p>An AO* search: the graph's nodes are situations, its moves the checks and mends that can be
 * made there, and a move leads to one node for each way it can turn out. Every node knows the least
 * it can cost, first by {@link LowerBound}, and the most it need cost, first by {@link MendOrder},
 * which is a plan that can be carried out. Each step walks down along the moves that may turn out
 * the cheapest, at each of them towards the outcome of which most is unknown, adds the moves of the
 * node it ends at, and carries the two figures back up. A move whose least exceeds its node's most
 * is dropped. What is reached in several ways is one node: situations are the same when the chances
 * agree to twelve digits and the same is open, asked and tried.
 *
 * <p>When the two figures of the first node meet, the strategy is the best there is. When the work
 * allowed runs out, what lies between them is known. The number of steps is not bounded by anything
 * useful, the problem being NP-hard (Vomlelová and Vomlel 2003); for the choice of what to look at
 * next see T. Smith and R. Simmons, <i>Heuristic search value iteration for POMDPs</i>, 2004.
 *
 * <p>One object belongs to one thread and one search.
 */
final class Search {
  private static final double IMPOSSIBLE = 1e-12;

  private final EffortModel model;
  private final AnswerModel answers;
  private final LowerBound lower;
  private final MendOrder upper;
  private final Map<Node, Node> nodes = new HashMap<>();
  private final Node root;
  private final double[] weights;
  private long work;

  /**
   * Begins a search.
   *
   * @param model what everything costs
   * @param from where it begins
   */
  Search(EffortModel model, Situation from) {
    this.model = model;
    this.answers = model.answers();
    this.lower = new LowerBound(model);
    this.upper = new MendOrder(model);
    this.weights = new double[answers.causes()];
    this.root = node(from.chances(), 1, lower.costs(from.open()), from.asked(), from.tried());
  }

  /** Where it began. */
  Node root() {
    return root;
  }

  /** How many chances were weighed so far: causes, for each way a looked-at move can turn out. */
  long work() {
    return work;
  }

  /** How many different situations were met. */
  int situations() {
    return nodes.size();
  }

  /**
   * Goes on until the first node's doubt is small enough, enough is proven or the work is done.
   *
   * @param doubt in minutes, 0 or more
   * @param enough stops when the first node is proven to cost at least this, in minutes
   * @param workAllowed chances that may be weighed in all
   */
  void run(double doubt, double enough, long workAllowed) {
    while (root.doubt() > doubt && root.atLeast < enough && work < workAllowed) {
      step();
    }
  }

  /** One walk down and up; counts as work itself, so that a search always ends. */
  private void step() {
    List<Node> path = new ArrayList<>();
    Node at = root;
    while (at != null) {
      path.add(at);
      at = at.isExpanded() ? onwards(at) : expand(at);
    }
    work += path.size();
    for (int i = path.size() - 1; i >= 0; i--) {
      path.get(i).backUp();
    }
  }

  /** The node to go on to, or null when the walk ends here. */
  private Node onwards(Node at) {
    Move move = at.mostPromising();
    if (move.next == null) {
      if (move.action == Action.YARD) {
        return null;
      }
      lookInto(at, move);
      at.backUp();
      if (at.mostPromising() != move) {
        return null;
      }
    }
    Node next = null;
    double most = 0;
    for (int i = 0; i < move.next.length; i++) {
      double unknown = move.chance[i] * move.next[i].doubt();
      if (unknown > most) {
        most = unknown;
        next = move.next[i];
      }
    }
    return next;
  }

  /** Finds a node's moves; the walk ends there. */
  private Node expand(Node node) {
    int pinned = pinned(node.asked);
    List<Move> moves = new ArrayList<>();
    if (pinned >= 0) {
      Move move = check(node, pinned);
      lookInto(node, move);
      moves.add(move);
    } else {
      Move yard = new Move(Action.YARD, 0, model.handOver(node.chances));
      yard.atLeast = yard.minutes;
      yard.atMost = yard.minutes;
      moves.add(yard);
      for (int cause = 0; cause < node.chances.length; cause++) {
        if (canPay(node, cause)) {
          moves.add(mend(node, cause));
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
    }
    node.moves = moves.toArray(new Move[0]);
    return null;
  }

  private int pinned(BitSet asked) {
    for (int check = 0; check < model.checks().size(); check++) {
      if (model.checks().get(check).comesFirst() && !asked.get(check)) {
        return check;
      }
    }
    return -1;
  }

  private boolean canPay(Node node, int cause) {
    MendEffort mend = model.mends().get(cause);
    return mend.byOwner()
        && !node.tried.get(cause)
        && node.chances[cause] * mend.cures() > IMPOSSIBLE;
  }

  /** Whether a check's answers are not equally likely under all causes that are left. */
  private boolean tells(double[] chances, int check) {
    for (int answer = 0; answer < answers.answers(check); answer++) {
      double[] row = answers.row(check, answer);
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

  private Move mend(Node node, int cause) {
    Move move = new Move(Action.MEND, cause, node.costs.mends()[cause]);
    double[] after = afterMend(node, cause);
    move.atLeast =
        move.minutes
            + lower.minutes(
                after, costsAfterMend(node, cause), node.asked, with(node.tried, cause));
    work += after.length;
    return move;
  }

  private Move check(Node node, int check) {
    Move move = new Move(Action.CHECK, check, node.costs.checks()[check]);
    CheckEffort effort = model.checks().get(check);
    Costs costs = costsWith(node, effort.access());
    BitSet asked = with(node.asked, check);
    double told = 0;
    for (int answer = 0; answer < answers.answers(check); answer++) {
      afterAnswer(node, check, answer);
      told += lower.minutes(weights, costs, asked, node.tried);
      work += weights.length;
    }
    double untold =
        effort.cantTell() > 0 ? lower.minutes(node.chances, costs, asked, node.tried) : 0;
    move.atLeast = move.minutes + (1 - effort.cantTell()) * told + effort.cantTell() * untold;
    return move;
  }

  /** Finds the nodes a move leads to. */
  private void lookInto(Node node, Move move) {
    List<Node> next = new ArrayList<>();
    List<Double> chance = new ArrayList<>();
    if (move.action == Action.MEND) {
      double[] after = afterMend(node, move.index);
      double left = sum(after);
      if (left > IMPOSSIBLE) {
        Costs costs = costsAfterMend(node, move.index);
        next.add(node(after, left, costs, node.asked, with(node.tried, move.index)));
        chance.add(left);
      }
    } else {
      CheckEffort effort = model.checks().get(move.index);
      Costs costs = costsWith(node, effort.access());
      BitSet asked = with(node.asked, move.index);
      for (int answer = 0; answer < answers.answers(move.index); answer++) {
        double likely = afterAnswer(node, move.index, answer);
        if (likely > IMPOSSIBLE && effort.cantTell() < 1) {
          next.add(node(weights, likely, costs, asked, node.tried));
          chance.add(likely * (1 - effort.cantTell()));
        }
      }
      if (effort.cantTell() > 0) {
        next.add(node(node.chances, 1, costs, asked, node.tried));
        chance.add(effort.cantTell());
      }
    }
    move.next = next.toArray(new Node[0]);
    move.chance = chance.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private double afterAnswer(Node node, int check, int answer) {
    double[] row = answers.row(check, answer);
    double sum = 0;
    for (int cause = 0; cause < weights.length; cause++) {
      weights[cause] = node.chances[cause] * row[cause];
      sum += weights[cause];
    }
    return sum;
  }

  private double[] afterMend(Node node, int cause) {
    double[] after = node.chances.clone();
    after[cause] *= 1 - model.mends().get(cause).cures();
    return after;
  }

  private Costs costsAfterMend(Node node, int cause) {
    MendEffort mend = model.mends().get(cause);
    return mend.shownAtOnce() ? costsWith(node, mend.access()) : lower.costs(new BitSet());
  }

  private Costs costsWith(Node node, BitSet access) {
    BitSet open = (BitSet) access.clone();
    open.or(node.costs.open());
    return lower.costs(open);
  }

  private Node node(double[] weights, double sum, Costs costs, BitSet asked, BitSet tried) {
    double[] chances = new double[weights.length];
    for (int cause = 0; cause < chances.length; cause++) {
      chances[cause] = weights[cause] / sum;
    }
    return nodes.computeIfAbsent(new Node(chances, costs, asked, tried), this::bounded);
  }

  /** Without a check there is no plan that can be carried out as long as safety demands one. */
  private Node bounded(Node node) {
    node.atMost =
        pinned(node.asked) >= 0
            ? Double.POSITIVE_INFINITY
            : upper.minutes(node.chances, node.costs.open(), node.tried);
    node.atLeast =
        Math.min(node.atMost, lower.minutes(node.chances, node.costs, node.asked, node.tried));
    return node;
  }

  private static double sum(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }

  private static BitSet with(BitSet set, int number) {
    BitSet more = (BitSet) set.clone();
    more.set(number);
    return more;
  }
}
