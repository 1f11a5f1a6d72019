package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import limberboard.desktop.base.Listeners;

/**
 * A main region with another one beside it while there is room, and as two tabs when there is not:
 * in a small window, or with large text.
 */
public final class Sides extends JPanel {
  private final int least;
  private final JComponent main;
  private final JComponent other;
  private final Divider divider;
  private final JTabbedPane tabs = new JTabbedPane();
  private final String mainTitle;
  private final String otherTitle;
  private final transient Listeners folding = new Listeners();
  private boolean narrow;
  private boolean tabbed = true;

  /**
   * Two regions.
   *
   * @param least the width from which on they stand side by side, in pixels of the usual text size
   * @param mainTitle what the main region is called on its tab
   * @param main the main region
   * @param otherTitle what the other region is called on its tab
   * @param other the other region
   * @param key by which the place of the divider is remembered
   * @param usual the main region's share of the width, 0 to 1
   * @param memory remembers it
   */
  public Sides(
      int least,
      String mainTitle,
      JComponent main,
      String otherTitle,
      JComponent other,
      String key,
      double usual,
      Divider.Memory memory) {
    super(new BorderLayout());
    this.least = least;
    this.main = main;
    this.other = other;
    this.mainTitle = mainTitle;
    this.otherTitle = otherTitle;
    this.divider = Divider.beside(key, main, other, usual, memory);
    setOpaque(false);
    add(divider);
  }

  /** Shows one region at a time where there is little room, without tabs to choose between them. */
  public Sides withoutTabs() {
    tabbed = false;
    return this;
  }

  /** Calls the listener when the regions come to stand side by side, or behind one another. */
  public void onFold(Runnable listener) {
    folding.add(listener);
  }

  /** Whether the regions are tabs. */
  public boolean isNarrow() {
    return narrow;
  }

  /** Brings the main region to the front. */
  public void showMain() {
    if (narrow && tabbed) {
      tabs.setSelectedIndex(0);
    } else if (narrow) {
      showOnly(main);
    }
  }

  /** Brings the other region to the front. */
  public void showOther() {
    if (narrow && tabbed) {
      tabs.setSelectedIndex(1);
    } else if (narrow) {
      showOnly(other);
    }
  }

  /** Brings the region that a component lies in to the front, and gives the component the focus. */
  public static void goTo(JComponent component) {
    bringForward(component);
    component.requestFocusInWindow();
  }

  /** Brings the region that a component lies in to the front. */
  public static void bringForward(JComponent component) {
    if (SwingUtilities.getAncestorOfClass(Sides.class, component) instanceof Sides sides) {
      if (SwingUtilities.isDescendingFrom(component, sides.other)) {
        sides.showOther();
      } else {
        sides.showMain();
      }
    }
  }

  /** Whether a component is seen, or would be if the tab it lies in were in front. */
  public static boolean isWithinReach(JComponent component) {
    if (component.isShowing()) {
      return true;
    }
    return SwingUtilities.getAncestorOfClass(Sides.class, component) instanceof Sides sides
        && sides.isShowing()
        && sides.narrow
        && sides.tabbed
        && sides.isOnItsTab(component);
  }

  private boolean isOnItsTab(Component component) {
    for (Component at = component; at != main && at != other; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private void showOnly(JComponent region) {
    removeAll();
    region.setVisible(true);
    add(region);
    revalidate();
    repaint();
  }

  @Override
  public void doLayout() {
    super.doLayout();
    boolean wanted = getWidth() < UIScale.scale(least);
    if (wanted != narrow && getWidth() > 0) {
      SwingUtilities.invokeLater(this::fold);
    }
  }

  private void fold() {
    boolean wanted = getWidth() < UIScale.scale(least);
    if (wanted == narrow) {
      return;
    }
    narrow = wanted;
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    removeAll();
    tabs.removeAll();
    if (narrow && !tabbed) {
      showOnly(main);
    } else if (narrow) {
      tabs.addTab(mainTitle, main);
      tabs.addTab(otherTitle, other);
      add(tabs);
    } else {
      divider.setLeftComponent(main);
      divider.setRightComponent(other);
      main.setVisible(true);
      other.setVisible(true);
      add(divider);
    }
    folding.tell();
    keepFocus(owner);
    revalidate();
    repaint();
  }

  /** What had the focus has it again, in the region that is in front for it. */
  private void keepFocus(Component owner) {
    if (owner instanceof JComponent focused && SwingUtilities.isDescendingFrom(owner, this)) {
      if (SwingUtilities.isDescendingFrom(owner, other)) {
        showOther();
      }
      Later.focus(focused);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (tabs != null) {
      List.of(tabs, divider, main, other).stream()
          .filter(region -> region.getParent() == null)
          .forEach(SwingUtilities::updateComponentTreeUI);
      revalidate();
    }
  }
}
