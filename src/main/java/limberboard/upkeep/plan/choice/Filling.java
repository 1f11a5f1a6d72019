package limberboard.upkeep.plan.choice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.upkeep.plan.choice.DayPacking.Packed;

/**
 * Makes choices that can be carried out: from a set that is wished for, and from a choice by
 * exchanging single chores. For one thread.
 */
final class Filling {
  private static final long TRIES = 2_000;

  private final Chores chores;
  private final DayPacking packing;
  private final List<Integer> inOrder;
  private final List<Integer> byWorth;

  Filling(Chores chores, Requirements graph, DayPacking packing) {
    this.chores = chores;
    this.packing = packing;
    this.inOrder = chores.inOrder();
    this.byWorth = byWorth(graph);
  }

  /** Lays a set into days, or as much of it as goes in, then whatever else goes in. */
  DayFill fill(BitSet set) {
    Packed packed = packing.pack(set, TRIES);
    DayFill fill = packed.packs() ? packed.fill() : new DayFill(chores);
    if (!packed.packs()) {
      addAll(packing.inOrder(set), fill);
    }
    addAll(byWorth, fill);
    return fill;
  }

  /**
   * A choice that is worth more, with one chore taken out and others put in; empty when there is
   * none, or none was found until so much was looked at.
   *
   * @param days the choice
   * @param worth what it is worth
   * @param mostSteps days tried, from the beginning of all
   */
  Optional<DayFill> better(int[] days, long worth, long mostSteps) {
    DayFill now = filled(days);
    for (int chore = 0; chore < chores.size(); chore++) {
      if (now.dayOf(chore) != DayFill.NONE && !isAwaited(chore, now)) {
        now.remove(chore);
        for (int instead : byWorth) {
          if (packing.steps() >= mostSteps) {
            return Optional.empty();
          }
          if (instead != chore && now.dayOf(instead) == DayFill.NONE) {
            Optional<DayFill> other =
                exchange(chore, instead, now).filter(found -> chores.worth(found.placed()) > worth);
            if (other.isPresent()) {
              return other;
            }
          }
        }
        now.place(chore, days[chore]);
      }
    }
    return Optional.empty();
  }

  private Optional<DayFill> exchange(int chore, int instead, DayFill without) {
    List<Integer> missing = missing(instead, without);
    long brings = missing.stream().mapToLong(each -> chores.chore(each).worth()).sum();
    if (brings <= chores.chore(chore).worth()) {
      return Optional.empty();
    }
    DayFill tried = without.copy();
    if (!packing.add(missing, tried)) {
      return Optional.empty();
    }
    addAll(byWorth, tried);
    return Optional.of(tried);
  }

  private boolean isAwaited(int chore, DayFill fill) {
    for (int other = 0; other < chores.size(); other++) {
      if (fill.dayOf(other) != DayFill.NONE && chores.chore(other).after().contains(chore)) {
        return true;
      }
    }
    return false;
  }

  private DayFill filled(int[] days) {
    DayFill fill = new DayFill(chores);
    for (int chore = 0; chore < days.length; chore++) {
      if (days[chore] != DayFill.NONE) {
        fill.place(chore, days[chore]);
      }
    }
    return fill;
  }

  /** Adds chores in an order, each with what comes before it, where they fit. */
  private void addAll(List<Integer> order, DayFill fill) {
    for (int chore : order) {
      if (fill.dayOf(chore) == DayFill.NONE) {
        packing.add(missing(chore, fill), fill);
      }
    }
  }

  private List<Integer> missing(int chore, DayFill fill) {
    BitSet before = before(chore);
    List<Integer> missing = new ArrayList<>();
    for (int each : inOrder) {
      if (before.get(each) && fill.dayOf(each) == DayFill.NONE) {
        missing.add(each);
      }
    }
    return missing;
  }

  /** A chore and all that come before it. */
  private BitSet before(int chore) {
    BitSet all = new BitSet();
    List<Integer> line = new ArrayList<>(List.of(chore));
    while (!line.isEmpty()) {
      int last = line.remove(line.size() - 1);
      if (!all.get(last)) {
        all.set(last);
        line.addAll(chores.chore(last).after());
      }
    }
    return all;
  }

  /** The chores, those first that bring most in the minutes they take with all they require. */
  private List<Integer> byWorth(Requirements graph) {
    double[] rate = new double[chores.size()];
    List<Integer> order = new ArrayList<>();
    for (int chore = 0; chore < rate.length; chore++) {
      BitSet with = graph.with(chore);
      rate[chore] = chores.worth(with.get(0, chores.size())) / (graph.minutes(with) + 1.0);
      order.add(chore);
    }
    order.sort(Comparator.comparing(chore -> -rate[chore]));
    return List.copyOf(order);
  }
}
