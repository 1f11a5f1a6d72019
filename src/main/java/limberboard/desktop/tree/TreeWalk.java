package limberboard.desktop.tree;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.desktop.base.Observed;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;

/**
 * A tree with what is selected, what is folded and where the trace stands, without Swing. For the
 * event thread only.
 */
public final class TreeWalk extends Observed {
  private static final int MOST_LEVELS = 3;
  private static final int ROWS_AT_FIRST = 8;
  private final DiagnosticTree tree;
  private final TreeAncestry kin;
  private final BitSet open = new BitSet();
  private Optional<Fork> here = Optional.empty();
  private Fork selected;
  private int foldings;

  /** A tree open for its first levels, with its root selected. */
  public TreeWalk(DiagnosticTree tree) {
    this.tree = tree;
    this.kin = new TreeAncestry(tree);
    this.selected = tree.root();
    openFirstLevels();
  }

  /** The tree. */
  public DiagnosticTree tree() {
    return tree;
  }

  /** Where the trace stands, when it is on this tree. */
  public Optional<Fork> here() {
    return here;
  }

  /** Marks where the trace stands, unfolds the way there, and selects it when it has moved. */
  public void mark(Optional<Fork> fork) {
    if (!here.equals(fork)) {
      here = fork;
      fork.ifPresent(this::select);
      fork.filter(this::canFold).ifPresent(at -> open(at, true));
    }
  }

  /** Whether the trace stands at a fork. */
  public boolean isHere(Fork fork) {
    return here.map(at -> at.number() == fork.number()).orElse(false);
  }

  /** Whether a fork is on the way from the root to where the trace stands. */
  public boolean isOnTheWay(Fork fork) {
    return here.isPresent() && kin.leadsTo(fork, here.get());
  }

  /** What is selected; always in sight of the folds. */
  public Fork selected() {
    return selected;
  }

  /** Selects a fork and unfolds the way there. */
  public void select(Fork fork) {
    kin.above(fork).forEach(above -> open(above, true));
    selected = fork;
    tell();
  }

  /** Whether something can be folded away behind a fork. */
  public boolean canFold(Fork fork) {
    return !fork.branches().isEmpty();
  }

  /** Whether what is behind a fork is shown. */
  public boolean isOpen(Fork fork) {
    return open.get(fork.number());
  }

  /** Shows or folds away what is behind a fork. */
  public void toggle(Fork fork) {
    if (canFold(fork)) {
      open(fork, !isOpen(fork));
      keepSelectionInSight();
      tell();
    }
  }

  private void open(Fork fork, boolean wanted) {
    if (isOpen(fork) != wanted) {
      open.set(fork.number(), wanted);
      foldings++;
    }
  }

  /** Unfolds everything. */
  public void unfoldAll() {
    unfoldTo(Integer.MAX_VALUE);
  }

  /**
   * Unfolds the first levels and folds what is behind them: what comes next on each way stays in
   * sight.
   *
   * @param levels how many, from 1
   */
  public void unfoldTo(int levels) {
    tree.forks().stream()
        .filter(this::canFold)
        .forEach(fork -> open(fork, kin.level(fork) < levels));
    keepSelectionInSight();
    tell();
  }

  /** Folds everything but the first levels and the way to where the trace stands. */
  public void foldAgain() {
    open.clear();
    foldings++;
    openFirstLevels();
    here.ifPresent(
        at -> {
          kin.above(at).forEach(above -> open(above, true));
          if (canFold(at)) {
            open(at, true);
          }
        });
    keepSelectionInSight();
    tell();
  }

  /** Folds and selects as another tree of the same fault is folded and selected. */
  void foldLike(TreeWalk other) {
    Set<List<TrailStep>> unfolded =
        other.tree.forks().stream()
            .filter(other::isOpen)
            .map(TreeWalk::way)
            .collect(Collectors.toSet());
    tree.forks().stream()
        .filter(this::canFold)
        .forEach(fork -> open(fork, unfolded.contains(way(fork))));
    List<TrailStep> to = way(other.selected);
    tree.forks().stream()
        .filter(fork -> way(fork).equals(to))
        .findFirst()
        .ifPresent(fork -> selected = fork);
    keepSelectionInSight();
  }

  private static List<TrailStep> way(Fork fork) {
    return fork.at().trail().stream().map(TrailEntry::step).toList();
  }

  /** Opens as many levels as can be read at a glance. */
  private void openFirstLevels() {
    int levels = MOST_LEVELS;
    while (levels > 1 && rows(tree.root(), levels) > ROWS_AT_FIRST) {
      levels--;
    }
    int chosen = levels;
    tree.forks().stream()
        .filter(fork -> canFold(fork) && kin.level(fork) < chosen)
        .forEach(fork -> open(fork, true));
  }

  /** How many rows it takes to show so many levels behind a fork. */
  private static int rows(Fork fork, int levels) {
    if (levels == 0 || fork.branches().isEmpty()) {
      return 1;
    }
    return fork.branches().stream()
        .mapToInt(branch -> branch.then().map(then -> rows(then, levels - 1)).orElse(1))
        .sum();
  }

  private void keepSelectionInSight() {
    List<Fork> above = kin.above(selected);
    above.stream().filter(fork -> !isOpen(fork)).findFirst().ifPresent(fork -> selected = fork);
  }

  /** Changes whenever something has been folded or unfolded. */
  public int foldings() {
    return foldings;
  }

  /** How many forks lie behind a fork. */
  public int behind(Fork fork) {
    return kin.behind(fork);
  }

  /** To the root. */
  public void toRoot() {
    select(tree.root());
  }

  /** To where the trace stands. */
  public void toHere() {
    here.ifPresent(this::select);
  }

  /** To the right: unfolds what is selected, or goes to the first fork behind it. */
  public void right() {
    if (canFold(selected) && !isOpen(selected)) {
      toggle(selected);
    } else {
      kin.children(selected).stream().findFirst().ifPresent(this::select);
    }
  }

  /** To the left: folds what is selected, or goes to the fork before it. */
  public void left() {
    if (canFold(selected) && isOpen(selected)) {
      toggle(selected);
    } else {
      kin.parent(selected).ifPresent(this::select);
    }
  }

  /** To the next fork (1) or the one before (-1) as far from the root as the selected one. */
  public void sideways(int by) {
    List<Fork> level =
        visible().stream().filter(fork -> kin.level(fork) == kin.level(selected)).toList();
    int to = level.indexOf(selected) + by;
    if (to >= 0 && to < level.size()) {
      select(level.get(to));
    }
  }

  /** The forks that no fold hides, each before those behind it. */
  public List<Fork> visible() {
    return tree.forks().stream()
        .filter(fork -> kin.above(fork).stream().allMatch(this::isOpen))
        .toList();
  }
}
