package limberboard.effort;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import limberboard.effort.Advice.Action;
import limberboard.effort.LowerBound.Costs;

/**
 * A situation in the graph of a {@link Search}, with the least and the most that it is known to
 * cost from there on, and the moves that may still be the best.
 */
final class Node {
  private static final double ROUNDING = 1e12;

  final double[] chances;
  final Costs costs;
  final BitSet asked;
  final BitSet tried;
  private final int hash;
  double atLeast;
  double atMost;
  Move[] moves;

  /**
   * A move out of a node.
   *
   * <p>Where it leads is looked at only when the move may be the best; until then it has bounds of
   * its own.
   */
  static final class Move {
    final Action action;
    final int index;
    final double minutes;
    double atLeast;
    double atMost = Double.POSITIVE_INFINITY;
    Node[] next;
    double[] chance;

    Move(Action action, int index, double minutes) {
      this.action = action;
      this.index = index;
      this.minutes = minutes;
    }

    /** Takes over what is known of the nodes it leads to. */
    void backUp() {
      if (next != null) {
        double least = minutes;
        double most = minutes;
        for (int i = 0; i < next.length; i++) {
          least += chance[i] * next[i].atLeast;
          most += chance[i] * next[i].atMost;
        }
        atLeast = Math.max(atLeast, least);
        atMost = Math.min(atMost, most);
      }
    }
  }

  Node(double[] chances, Costs costs, BitSet asked, BitSet tried) {
    this.chances = chances;
    this.costs = costs;
    this.asked = asked;
    this.tried = tried;
    int mixed = 31 * (31 * costs.number() + asked.hashCode()) + tried.hashCode();
    for (double chance : chances) {
      mixed = 31 * mixed + Long.hashCode(rounded(chance));
    }
    this.hash = mixed;
  }

  private static long rounded(double chance) {
    return Math.round(chance * ROUNDING);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Node that
        && hash == that.hash
        && costs == that.costs
        && asked.equals(that.asked)
        && tried.equals(that.tried)
        && sameChances(that.chances);
  }

  private boolean sameChances(double[] others) {
    for (int cause = 0; cause < chances.length; cause++) {
      if (rounded(chances[cause]) != rounded(others[cause])) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** Whether its moves are known. */
  boolean isExpanded() {
    return moves != null;
  }

  /** The move of this kind, while it may still be the best. */
  Optional<Move> move(Action action, int index) {
    return moves().stream()
        .filter(move -> move.action == action && move.index == index)
        .findFirst();
  }

  /** The moves that may still be the best; none before it is expanded. */
  List<Move> moves() {
    return isExpanded() ? List.of(moves) : List.of();
  }

  /** How much is not yet known of what it costs. */
  double doubt() {
    return atMost - atLeast;
  }

  /** The move that may turn out the cheapest; the first of equals. */
  Move mostPromising() {
    Move best = moves[0];
    for (Move move : moves) {
      if (move.atLeast < best.atLeast) {
        best = move;
      }
    }
    return best;
  }

  /** Takes over what is known of its moves, and forgets those that cannot be the best. */
  void backUp() {
    double least = Double.POSITIVE_INFINITY;
    for (Move move : moves) {
      move.backUp();
      least = Math.min(least, move.atLeast);
      atMost = Math.min(atMost, move.atMost);
    }
    atLeast = Math.min(Math.max(atLeast, least), atMost);
    forget();
  }

  private void forget() {
    int keep = 0;
    for (Move move : moves) {
      if (move.atLeast <= atMost) {
        keep++;
      }
    }
    if (keep > 0 && keep < moves.length) {
      Move[] kept = new Move[keep];
      int at = 0;
      for (Move move : moves) {
        if (move.atLeast <= atMost) {
          kept[at++] = move;
        }
      }
      moves = kept;
    }
  }
}
