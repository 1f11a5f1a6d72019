package limberboard.sharing.merge;

import java.util.ArrayList;
import java.util.List;
import limberboard.history.parts.ListChange;
import limberboard.history.parts.Stretch;

/**
 * Brings two changed lists together that come from one (Khanna, Kunal and Pierce, <i>A formal
 * investigation of diff3</i>, 2007): what one side alone changed is taken.
 */
final class ThreeWay {
  private final List<String> base;
  private final List<String> ours;
  private final List<String> theirs;
  private final boolean mayTouch;
  private final List<Part> parts = new ArrayList<>();

  /** A part of the result. */
  sealed interface Part {}

  /** What nobody or one side changed, or both alike. */
  record Agreed(List<String> texts) implements Part {}

  /**
   * What both changed differently.
   *
   * @param at where it stands in the list of ours
   */
  record Disputed(List<String> base, List<String> ours, List<String> theirs, int at)
      implements Part {}

  private ThreeWay(List<String> base, List<String> ours, List<String> theirs, boolean mayTouch) {
    this.base = base;
    this.ours = ours;
    this.theirs = theirs;
    this.mayTouch = mayTouch;
  }

  /**
   * Merges three lists.
   *
   * @param mayTouch whether changes of neighbouring entries are taken both; otherwise they are
   *     disputed
   */
  static List<Part> merge(
      List<String> base, List<String> ours, List<String> theirs, boolean mayTouch) {
    ThreeWay merge = new ThreeWay(base, ours, theirs, mayTouch);
    merge.run(ListChange.between(base, ours), ListChange.between(base, theirs));
    return merge.parts;
  }

  private void run(List<Stretch> a, List<Stretch> b) {
    int at = 0;
    int i = 0;
    int j = 0;
    while (i < a.size() || j < b.size()) {
      boolean oursFirst = j == b.size() || i < a.size() && isBefore(a.get(i), b.get(j));
      Stretch first = oursFirst ? a.get(i) : b.get(j);
      int from = first.from();
      int to = first.to();
      int aFrom = i;
      int bFrom = j;
      i += oursFirst ? 1 : 0;
      j += oursFirst ? 0 : 1;
      while (true) {
        if (i < a.size() && meets(from, to, a.get(i))) {
          to = Math.max(to, a.get(i++).to());
        } else if (j < b.size() && meets(from, to, b.get(j))) {
          to = Math.max(to, b.get(j++).to());
        } else {
          break;
        }
      }
      agreed(base.subList(at, from));
      region(from, to, a.subList(aFrom, i), b.subList(bFrom, j), a, aFrom);
      at = to;
    }
    agreed(base.subList(at, base.size()));
  }

  private static boolean isBefore(Stretch a, Stretch b) {
    return a.from() < b.from() || a.from() == b.from() && a.to() <= b.to();
  }

  /** Whether a further change falls on the region so far. */
  private boolean meets(int from, int to, Stretch next) {
    if (!mayTouch) {
      return next.from() <= to;
    }
    boolean bothPutIn = from == to && next.from() == next.to() && next.from() == from;
    return next.from() < to || bothPutIn;
  }

  private void region(
      int from, int to, List<Stretch> a, List<Stretch> b, List<Stretch> all, int aFrom) {
    if (b.isEmpty()) {
      agreed(side(from, to, a, ours));
    } else if (a.isEmpty()) {
      agreed(side(from, to, b, theirs));
    } else {
      List<String> one = side(from, to, a, ours);
      List<String> other = side(from, to, b, theirs);
      if (one.equals(other)) {
        agreed(one);
      } else {
        int at = all.get(aFrom).nowFrom() - (all.get(aFrom).from() - from);
        parts.add(new Disputed(base.subList(from, to), one, other, at));
      }
    }
  }

  /** What a side has in place of a region of the base. */
  private List<String> side(int from, int to, List<Stretch> changes, List<String> now) {
    List<String> texts = new ArrayList<>();
    int at = from;
    for (Stretch change : changes) {
      texts.addAll(base.subList(at, change.from()));
      texts.addAll(now.subList(change.nowFrom(), change.nowTo()));
      at = change.to();
    }
    texts.addAll(base.subList(at, to));
    return texts;
  }

  private void agreed(List<String> texts) {
    if (!texts.isEmpty()) {
      parts.add(new Agreed(List.copyOf(texts)));
    }
  }
}
