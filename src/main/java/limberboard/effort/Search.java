package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.effort.Advice.Action;
import limberboard.effort.Effects.Effect;
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
  private final EffortModel model;
  private final LowerBound lower;
  private final MendOrder upper;
  private final Effects effects;
  private final MoveFinder finder;
  private final Map<Node, Node> nodes = new HashMap<>();
  private final Map<BitSet, BitSet> sets = new HashMap<>();
  private final Node root;
  private long work;

  /**
   * Begins a search.
   *
   * @param model what everything costs
   * @param from where it begins
   */
  Search(EffortModel model, Situation from) {
    this(model, from, new LowerBound(model));
  }

  /**
   * Begins a search.
   *
   * @param model what everything costs
   * @param from where it begins
   * @param lower what nothing can go below
   */
  Search(EffortModel model, Situation from, LowerBound lower) {
    this.model = model;
    this.lower = lower;
    this.upper = new MendOrder(model);
    this.effects = new Effects(model, lower);
    this.finder = new MoveFinder(model, lower, effects);
    this.root = node(from.chances(), 1, lower.costs(from.open()), from.asked(), from.tried());
  }

  /** Where it began. */
  Node root() {
    return root;
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
    List<Move> moves = finder.of(node);
    node.moves = moves.toArray(new Move[0]);
    for (Move move : moves) {
      work += (long) waysCounted(move) * node.chances.length;
    }
    if (model.demanded(node.asked) >= 0) {
      lookInto(node, node.moves[0]);
    }
    return null;
  }

  /** How many ways of turning out count as work. */
  private int waysCounted(Move move) {
    return switch (move.action) {
      case YARD -> 0;
      case MEND -> 1;
      case CHECK -> model.answers().answers(move.index);
    };
  }

  /** Finds the nodes a move leads to. */
  private void lookInto(Node node, Move move) {
    List<Node> next = new ArrayList<>();
    List<Double> chance = new ArrayList<>();
    for (Effect effect : effects.of(node, move.action, move.index)) {
      double likely = effect.sum();
      if (likely > MoveFinder.IMPOSSIBLE) {
        next.add(node(effect.weights(), likely, effect.costs(), effect.asked(), effect.tried()));
        chance.add(likely * effect.share());
      }
    }
    move.next = next.toArray(new Node[0]);
    move.chance = chance.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private Node node(double[] weights, double sum, Costs costs, BitSet asked, BitSet tried) {
    double[] chances = new double[weights.length];
    for (int cause = 0; cause < chances.length; cause++) {
      chances[cause] = weights[cause] / sum;
    }
    return nodes.computeIfAbsent(new Node(chances, costs, one(asked), one(tried)), this::bounded);
  }

  /** The one that stands for all sets of the same: millions of nodes share a few thousand. */
  private BitSet one(BitSet set) {
    return sets.computeIfAbsent(set, same -> same);
  }

  /** Without a check there is no plan that can be carried out as long as safety demands one. */
  private Node bounded(Node node) {
    node.atMost =
        model.demanded(node.asked) >= 0
            ? Double.POSITIVE_INFINITY
            : upper.minutes(node.chances, node.costs.open(), node.tried);
    node.atLeast =
        Math.min(node.atMost, lower.minutes(node.chances, node.costs, node.asked, node.tried));
    return node;
  }
}
