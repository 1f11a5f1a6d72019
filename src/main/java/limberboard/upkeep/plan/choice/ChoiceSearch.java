package limberboard.upkeep.plan.choice;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import limberboard.upkeep.plan.choice.DayPacking.Packed;
import limberboard.upkeep.plan.choice.WorthBound.Relaxed;

/**
 * Chooses the chores that are worth most in the time there is, and lays them into days: branch and
 * bound. At each stand some chores are decided, done or left; {@link WorthBound} says how much can
 * follow at most, what {@link DayPacking} gets in is a choice that can be carried out. The stand
 * that promises most is looked at first. It ends when nothing promises more than what was found, or
 * when so much was looked at; then the greatest promise left is the proven bound. What is counted
 * is work and not time, so that the same question always has the same answer. For one thread.
 */
public final class ChoiceSearch {
  /** How much is looked at at most, where nothing else is asked. */
  public static final long USUAL_STEPS = 3_000_000;

  private static final long TRIES = 2_000;
  private static final int ALL = 100;
  private static final int LEAST_SHARE = 70;
  private static final int SHARE_STEP = 3;
  private static final long TRIES_OF_LAST = 200_000;

  private final Chores chores;
  private final Requirements graph;
  private List<WorthBound> bounds;
  private final DayPacking packing;
  private final long mostSteps;
  private final Filling filling;
  private final PriorityQueue<Stand> open =
      new PriorityQueue<>(
          Comparator.comparing((Stand stand) -> -stand.most())
              .thenComparing(stand -> -stand.decided())
              .thenComparing(Stand::number));
  private int[] best;
  private long worth;
  private long unproven;
  private int numbered;

  private ChoiceSearch(Chores chores, long mostSteps, long least) {
    this.worth = least;
    this.chores = chores;
    this.graph = new Requirements(chores);
    this.bounds = chores.days().isEmpty() ? List.of() : WorthBound.all(chores, graph);
    this.packing = new DayPacking(chores);
    this.mostSteps = mostSteps;
    this.filling = new Filling(chores, graph, packing);
    this.best = new DayFill(chores).days();
  }

  /** Chores decided: done, with all they require, and left, with all that require them. */
  private record Stand(BitSet in, BitSet out, long most, int decided, int number) {}

  /** The best choice found, looking at {@link #USUAL_STEPS} at most. */
  public static DayChoice of(Chores chores) {
    return of(chores, USUAL_STEPS);
  }

  /**
   * The best choice found.
   *
   * @param mostSteps how much is looked at at most; a first choice is made whatever this is
   */
  public static DayChoice of(Chores chores, long mostSteps) {
    return of(chores, mostSteps, 0);
  }

  /**
   * The best choice found that is worth more than something; where none was found nothing is done,
   * and the worth is this one.
   *
   * @param mostSteps as above
   * @param least what a choice has to be worth more than
   */
  static DayChoice of(Chores chores, long mostSteps, long least) {
    return new ChoiceSearch(chores, mostSteps, least).search();
  }

  /** What any choice can be worth at most, as far as that is seen without a search. */
  static long promise(Chores chores) {
    ChoiceSearch search = new ChoiceSearch(chores, 0, 0);
    return search.relaxed(new BitSet(), search.never()).most();
  }

  private DayChoice search() {
    BitSet in = new BitSet();
    BitSet never = never();
    chooseBounds(in, never);
    for (int share = ALL; share >= LEAST_SHARE; share -= SHARE_STEP) {
      for (WorthBound bound : bounds) {
        keep(filling.fill(chores(bound.of(in, never, share).low())));
      }
    }
    improve();
    add(in, never);
    while (!open.isEmpty() && open.peek().most() > worth && steps() < mostSteps) {
      look(open.poll());
    }
    long most = Math.max(worth, Math.max(unproven, open.isEmpty() ? 0 : open.peek().most()));
    return new DayChoice(Arrays.stream(best).boxed().toList(), worth, most, steps());
  }

  /** Keeps those bounds only that say more than that over all days. */
  private void chooseBounds(BitSet in, BitSet out) {
    if (bounds.isEmpty()) {
      return;
    }
    WorthBound whole = bounds.get(0);
    long most = whole.of(in, out).most();
    bounds =
        bounds.stream().filter(each -> each == whole || each.of(in, out).most() < most).toList();
  }

  /** What the sharpest of the bounds says. */
  private Relaxed relaxed(BitSet in, BitSet out) {
    Relaxed sharpest = new Relaxed(0, in, in);
    for (int i = 0; i < bounds.size(); i++) {
      Relaxed next = bounds.get(i).of(in, out);
      sharpest = i == 0 || next.most() < sharpest.most() ? next : sharpest;
    }
    return sharpest;
  }

  private long bounding() {
    return bounds.stream().mapToLong(WorthBound::steps).sum();
  }

  private long steps() {
    return bounding() + packing.steps();
  }

  /** Chores that cannot be done on any day, even if nothing else is, and what requires them. */
  private BitSet never() {
    BitSet never = new BitSet();
    for (int chore = 0; chore < chores.size(); chore++) {
      Chore each = chores.chore(chore);
      long least = each.minutes() + each.opens().stream().mapToLong(chores::opening).sum();
      boolean fits = false;
      for (int day = each.firstDay(); day <= each.lastDay() && day < chores.days().size(); day++) {
        fits |= least <= chores.days().get(day);
      }
      BitSet with = (BitSet) graph.with(chore).clone();
      if (!fits || packing.pack(chores(with), TRIES).impossible()) {
        never.or(graph.dependants(chore));
      }
    }
    return never;
  }

  /** Puts a stand among those to be looked at, unless it promises nothing. */
  private void add(BitSet in, BitSet out) {
    if (graph.minutes(in) > chores.time() || packing.pack(chores(in), TRIES).impossible()) {
      return;
    }
    Relaxed relaxed = relaxed(in, out);
    if (relaxed.most() > worth) {
      numbered++;
      int decided = in.cardinality() + out.cardinality();
      open.add(new Stand(in, out, relaxed.most(), decided, numbered));
    }
  }

  private void look(Stand stand) {
    Relaxed relaxed = relaxed(stand.in(), stand.out());
    BitSet low = chores(relaxed.low());
    if (keep(filling.fill(low))) {
      improve();
    }
    if (relaxed.most() <= worth) {
      return;
    }
    BitSet undecided = chores(relaxed.high());
    undecided.andNot(relaxed.low());
    if (undecided.isEmpty()) {
      undecided = (BitSet) low.clone();
      undecided.andNot(stand.in());
    }
    if (undecided.isEmpty()) {
      last(stand);
      return;
    }
    branch(stand, widest(undecided));
  }

  /** A stand in which all that is worth doing is decided, and does not go into the days so far. */
  private void last(Stand stand) {
    Packed packed = packing.pack(chores(stand.in()), TRIES_OF_LAST);
    if (packed.packs()) {
      keep(packed.fill());
    } else if (!packed.impossible()) {
      unproven = Math.max(unproven, stand.most());
    }
  }

  private void branch(Stand stand, int chore) {
    BitSet in = (BitSet) stand.in().clone();
    in.or(graph.with(chore));
    if (!in.intersects(stand.out())) {
      add(in, stand.out());
    }
    BitSet out = (BitSet) stand.out().clone();
    out.or(graph.dependants(chore));
    if (!out.intersects(stand.in())) {
      add(stand.in(), out);
    }
  }

  /** The chore that, decided, changes most: that which takes longest with all it requires. */
  private int widest(BitSet set) {
    int widest = set.nextSetBit(0);
    long most = -1;
    for (int chore = widest; chore >= 0; chore = set.nextSetBit(chore + 1)) {
      long minutes = chores.chore(chore).minutes();
      if (minutes > most) {
        most = minutes;
        widest = chore;
      }
    }
    return widest;
  }

  /** Exchanges single chores for as long as that helps. */
  private void improve() {
    Optional<DayFill> better = filling.better(best, worth, mostSteps - bounding());
    while (better.isPresent() && keep(better.get())) {
      better = filling.better(best, worth, mostSteps - bounding());
    }
  }

  private boolean keep(DayFill fill) {
    long found = chores.worth(fill.placed());
    boolean better = found > worth;
    if (better) {
      worth = found;
      best = fill.days();
    }
    return better;
  }

  private BitSet chores(BitSet nodes) {
    return nodes.get(0, chores.size());
  }
}
