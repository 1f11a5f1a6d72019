package limberboard.desktop.tree;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;

/**
 * The tree of the trace that is followed, without Swing. It grows in the background, from the
 * beginning of the trace, and only when somebody wants to see it. For the event thread only.
 */
public final class TreeModel extends Observed {
  private final Latest latest;
  private Optional<Trace> here = Optional.empty();
  private Optional<TreeWalk> fromBeginning = Optional.empty();
  private Optional<TreeWalk> fromHere = Optional.empty();
  private Optional<TreeWalk> shown = Optional.empty();
  private Optional<TreeGrowth> growth = Optional.empty();
  private OptionalInt levels = OptionalInt.empty();
  private boolean wanted;
  private boolean beginningAsked;

  /**
   * A model without a tree.
   *
   * @param background grows trees; nothing else should have to wait for it
   */
  public TreeModel(Background background) {
    this.latest = new Latest(background);
  }

  /** Follows a trace: where it stands is marked on the tree. */
  public void follow(Optional<Trace> trace) {
    if (!isOfSameFault(trace)) {
      boolean readAgain = isReadAgain(trace);
      stop();
      fromBeginning = Optional.empty();
      fromHere = Optional.empty();
      shown = readAgain ? shown : Optional.empty();
      beginningAsked = false;
      levels = readAgain ? levels : OptionalInt.empty();
    }
    if (!trace.equals(here)) {
      here = trace;
      beginningAsked = false;
    }
    bringUpToDate();
  }

  private boolean isOfSameFault(Optional<Trace> trace) {
    return here.map(Trace::fault).equals(trace.map(Trace::fault));
  }

  /** Whether it is the same boat and symptom, whose files have changed. */
  private boolean isReadAgain(Optional<Trace> trace) {
    return trace.isPresent()
        && here.isPresent()
        && about(trace.get().fault()).equals(about(here.get().fault()));
  }

  private static List<String> about(Fault fault) {
    return List.of(fault.fitting().boat().id(), fault.page().id());
  }

  /** Says whether somebody looks at the tree; nothing is worked out for nobody. */
  public void want(boolean seen) {
    wanted = seen;
    if (!wanted) {
      stop();
    }
    bringUpToDate();
  }

  /** Shows the tree from the beginning although the trace has gone another way. */
  public void showFromBeginning() {
    beginningAsked = true;
    bringUpToDate();
  }

  /** Shows the tree from where the trace stands again. */
  public void showFromHere() {
    beginningAsked = false;
    bringUpToDate();
  }

  /** Tries again after it has been stopped or has failed. */
  public void tryAgain() {
    bringUpToDate();
  }

  /** Stops growing a tree. */
  public void stop() {
    growth.ifPresent(TreeGrowth::stop);
    growth = Optional.empty();
    latest.drop();
    tell();
  }

  private void bringUpToDate() {
    if (!wanted || here.isEmpty() || growth.isPresent()) {
      return;
    }
    Trace now = here.get();
    if (fromBeginning.isEmpty()) {
      grow(Trace.begin(now.fault()));
      return;
    }
    TreeWalk whole = fromBeginning.get();
    whole.mark(whole.tree().where(now));
    if (whole.here().isPresent() || beginningAsked) {
      show(whole);
    } else if (fromHere.isPresent() && fromHere.get().tree().where(now).isPresent()) {
      fromHere.get().mark(fromHere.get().tree().where(now));
      show(fromHere.get());
    } else {
      grow(now);
    }
  }

  private void grow(Trace from) {
    boolean whole = from.trail().isEmpty();
    TreeGrowth growing = new TreeGrowth(from);
    growth = Optional.of(growing);
    shown = shown.filter(walk -> !walk.tree().from().fault().equals(from.fault()));
    tell();
    latest.run(
        "Drawing out the whole tree",
        () -> grown(growing),
        tree -> {
          growth = Optional.empty();
          tree.map(TreeWalk::new).ifPresent(walk -> keep(walk, whole));
        },
        this::stop);
  }

  private static Optional<DiagnosticTree> grown(TreeGrowth growing) {
    try {
      return Optional.of(growing.tree());
    } catch (CancellationException e) {
      return Optional.empty();
    }
  }

  /** A tree that takes the place of one whose files have changed is folded like that one. */
  private void keep(TreeWalk walk, boolean whole) {
    here.ifPresent(now -> walk.mark(walk.tree().where(now)));
    shown.ifPresent(walk::foldLike);
    if (whole) {
      fromBeginning = Optional.of(walk);
    } else {
      fromHere = Optional.of(walk);
    }
    walk.onChange(this::tell);
    bringUpToDate();
  }

  private void show(TreeWalk walk) {
    shown = Optional.of(walk);
    tell();
  }

  /** The tree that is shown, once it has grown. */
  public Optional<TreeWalk> walk() {
    return shown;
  }

  /** How many levels are printed and saved; empty for all there are. */
  public OptionalInt levels() {
    return levels;
  }

  /**
   * Shows so many levels, and prints and saves as many.
   *
   * @param wantedLevels from 1; empty for all there are
   */
  public void chooseLevels(OptionalInt wantedLevels) {
    levels = wantedLevels;
    shown.ifPresent(walk -> walk.unfoldTo(levels.orElse(Integer.MAX_VALUE)));
    tell();
  }

  /** The tree that is shown, as far as it is to be printed and saved. */
  public Optional<TreeCut> cut() {
    return shown.map(walk -> TreeCut.levels(walk.tree(), levels.orElse(Integer.MAX_VALUE)));
  }

  /** Whether a tree is growing. */
  public boolean isGrowing() {
    return growth.isPresent();
  }

  /** How many forks the growing tree has so far. */
  public int forksSoFar() {
    return growth.map(TreeGrowth::forks).orElse(0);
  }

  /** Whether the trace has gone another way than the tree from the beginning would. */
  public boolean wentAnotherWay() {
    return fromBeginning.isPresent() && fromBeginning.get().here().isEmpty();
  }

  /** Whether the tree that is shown begins where the trace stands or has stood, not before. */
  public boolean isFromHere() {
    return shown.isPresent() && !shown.equals(fromBeginning);
  }
}
