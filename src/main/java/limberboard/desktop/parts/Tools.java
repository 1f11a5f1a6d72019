package limberboard.desktop.parts;

import java.awt.Dimension;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;

/**
 * Controls above something that is to be seen. They take two lines at most, and one in a low
 * window; what is seldom pressed and has no room is in a menu, so that what is to be seen keeps the
 * height.
 */
public final class Tools extends JPanel {
  private final int gap;
  private final transient List<JComponent> always;
  private final transient List<JButton> seldom;
  private final transient Set<JButton> leftOut = new HashSet<>();
  private final JButton more = Buttons.menu("More", this::open);

  /**
   * Controls.
   *
   * @param name the name of the button that opens the menu, and what it is for
   * @param gap between controls and lines, in pixels
   * @param always stay in sight, from left to right
   * @param seldom stand after them, the first longest in sight
   */
  public Tools(
      String name, int gap, List<? extends JComponent> always, List<? extends JButton> seldom) {
    super(new WrapLayout(gap));
    this.gap = gap;
    this.always = List.copyOf(always);
    this.seldom = List.copyOf(seldom);
    setOpaque(false);
    more.setName(name);
    more.setVisible(false);
    always.forEach(this::add);
    seldom.forEach(this::add);
    add(more);
  }

  /** Offers some of what is seldom pressed, or leaves it out, also of the menu. */
  public void offer(List<? extends JButton> some, boolean wanted) {
    if (wanted ? leftOut.removeAll(some) : leftOut.addAll(some)) {
      revalidate();
    }
  }

  private List<JButton> offered() {
    return seldom.stream().filter(button -> !leftOut.contains(button)).toList();
  }

  private void open() {
    JPopupMenu menu = new JPopupMenu("More");
    for (JButton button : offered()) {
      if (!button.isVisible()) {
        menu.add(Buttons.item(button));
      }
    }
    menu.show(more, 0, more.getHeight());
  }

  /** Always computed, because it depends on the width that is about to be given. */
  @Override
  public Dimension getPreferredSize() {
    int width = Widths.inside(this);
    int high = more.getPreferredSize().height;
    for (JComponent control : always) {
      high = Math.max(high, control.getPreferredSize().height);
    }
    int lines = lines(inSight(width), width);
    Insets insets = getInsets();
    return new Dimension(
        width + insets.left + insets.right,
        lines * high + (lines - 1) * gap + insets.top + insets.bottom);
  }

  @Override
  public void doLayout() {
    fit(Widths.inside(this));
    super.doLayout();
  }

  /** How many of the seldom pressed have room. */
  private int inSight(int width) {
    int inSight = offered().size();
    while (inSight > 0 && lines(inSight, width) > mostLines()) {
      inSight--;
    }
    return inSight;
  }

  private void fit(int width) {
    int inSight = inSight(width);
    List<JButton> offered = offered();
    for (JButton button : seldom) {
      int at = offered.indexOf(button);
      show(button, at >= 0 && at < inSight);
    }
    show(more, inSight < offered.size());
  }

  private static void show(JComponent control, boolean wanted) {
    if (control.isVisible() != wanted) {
      control.setVisible(wanted);
    }
  }

  private int mostLines() {
    return Widths.isInLowWindow(this) ? 1 : 2;
  }

  /** How many lines it takes with so many of the seldom pressed in sight. */
  private int lines(int inSight, int width) {
    List<JComponent> shown = new ArrayList<>(always);
    shown.removeIf(control -> !control.isVisible());
    List<JButton> offered = offered();
    shown.addAll(offered.subList(0, inSight));
    if (inSight < offered.size()) {
      shown.add(more);
    }
    int lines = 1;
    int x = 0;
    for (JComponent control : shown) {
      int wide = Math.min(control.getPreferredSize().width, width);
      if (x > 0 && x + wide > width) {
        lines++;
        x = 0;
      }
      x += wide + gap;
    }
    return lines;
  }
}
