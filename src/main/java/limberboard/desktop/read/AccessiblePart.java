package limberboard.desktop.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleAction;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.accessibility.AccessibleText;
import limberboard.desktop.read.LaidOutText.Part;

/**
 * A part of a page for those who listen: a heading, a paragraph, a list with its items, a table
 * with its cells, a link. For the event thread only.
 */
final class AccessiblePart extends AccessibleContext implements Accessible, AccessibleAction {
  private final PageView view;
  private final AccessibleRole role;
  private final Optional<Part> words;
  private final List<AccessiblePart> children = new ArrayList<>();
  private Optional<Link> link = Optional.empty();

  AccessiblePart(PageView view, AccessibleRole role, String name, Optional<Part> words) {
    this.view = view;
    this.role = role;
    this.words = words;
    setAccessibleName(name);
    setAccessibleParent(view);
  }

  /** A link. */
  static AccessiblePart link(PageView view, Link link) {
    Part part = LaidOutText.part(link);
    AccessiblePart made =
        new AccessiblePart(
            view, AccessibleRole.HYPERLINK, view.text().plain(part), Optional.of(part));
    made.link = Optional.of(link);
    return made;
  }

  AccessiblePart add(AccessiblePart child) {
    child.setAccessibleParent(this);
    children.add(child);
    return child;
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    return this;
  }

  @Override
  public AccessibleRole getAccessibleRole() {
    return role;
  }

  @Override
  public AccessibleStateSet getAccessibleStateSet() {
    AccessibleStateSet states = new AccessibleStateSet();
    states.add(AccessibleState.ENABLED);
    if (view.isShowing()) {
      states.add(AccessibleState.VISIBLE);
      states.add(AccessibleState.SHOWING);
    }
    if (link.isPresent()) {
      states.add(AccessibleState.FOCUSABLE);
    }
    if (link.isPresent() && link.equals(view.link())) {
      states.add(AccessibleState.FOCUSED);
    }
    return states;
  }

  @Override
  public int getAccessibleIndexInParent() {
    AccessibleContext parent = getAccessibleParent().getAccessibleContext();
    for (int i = 0; i < parent.getAccessibleChildrenCount(); i++) {
      if (parent.getAccessibleChild(i) == this) {
        return i;
      }
    }
    return -1;
  }

  @Override
  public int getAccessibleChildrenCount() {
    return children.size();
  }

  @Override
  public Accessible getAccessibleChild(int index) {
    return children.get(index);
  }

  @Override
  public AccessibleText getAccessibleText() {
    return words.map(part -> new AccessibleWords(view, part)).orElse(null);
  }

  @Override
  public AccessibleAction getAccessibleAction() {
    return link.isPresent() ? this : null;
  }

  @Override
  public int getAccessibleActionCount() {
    return link.isPresent() ? 1 : 0;
  }

  @Override
  public String getAccessibleActionDescription(int index) {
    return link.isPresent() && index == 0 ? "Open the page" : null;
  }

  @Override
  public boolean doAccessibleAction(int index) {
    boolean can = link.isPresent() && index == 0;
    if (can) {
      view.follow(link.get());
    }
    return can;
  }

  @Override
  public Locale getLocale() {
    return view.getLocale();
  }
}
