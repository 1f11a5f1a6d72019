package limberboard.desktop.tree;

import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import limberboard.trace.DiagnosticTree.Fork;

/** A fork for those who listen: a label with everything about it, selected or not, open or not. */
final class AccessibleFork extends AccessibleContext implements Accessible {
  private final TreeCanvas view;
  private final TreeWalk walk;
  private final Fork fork;
  private final int index;

  AccessibleFork(TreeCanvas view, TreeWalk walk, Fork fork, int index) {
    this.view = view;
    this.walk = walk;
    this.fork = fork;
    this.index = index;
    setAccessibleName(ForkWords.spoken(walk, fork));
    setAccessibleParent(view);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    return this;
  }

  @Override
  public AccessibleRole getAccessibleRole() {
    return AccessibleRole.LABEL;
  }

  @Override
  public AccessibleStateSet getAccessibleStateSet() {
    AccessibleStateSet states = new AccessibleStateSet();
    states.add(AccessibleState.SELECTABLE);
    states.add(AccessibleState.VISIBLE);
    if (walk.selected().number() == fork.number()) {
      states.add(AccessibleState.SELECTED);
    }
    if (walk.canFold(fork)) {
      states.add(AccessibleState.EXPANDABLE);
      states.add(walk.isOpen(fork) ? AccessibleState.EXPANDED : AccessibleState.COLLAPSED);
    }
    return states;
  }

  @Override
  public int getAccessibleIndexInParent() {
    return index;
  }

  @Override
  public int getAccessibleChildrenCount() {
    return 0;
  }

  @Override
  public Accessible getAccessibleChild(int child) {
    throw new IndexOutOfBoundsException("a fork has no parts of its own, so no part " + child);
  }

  @Override
  public Locale getLocale() {
    return view.getLocale();
  }
}
