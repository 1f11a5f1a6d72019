package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.OptionalInt;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import javax.swing.plaf.basic.BasicSplitPaneUI;

/**
 * Two regions with a divider between them that can be moved and is remembered. The regions keep
 * their shares of the room when the window grows or shrinks.
 */
public final class Divider extends JSplitPane {
  private static final int THOUSAND = 1000;
  private static final int LEAST_WIDTH = 150;
  private static final int LEAST_HEIGHT = 60;
  private final transient Memory memory;
  private final String key;
  private int share;

  /** Where dividers' places are kept, in thousandths of the room. */
  public interface Memory {
    /** Where a divider stood last time. */
    OptionalInt place(String key);

    /** Remembers where a divider stands. */
    void remember(String key, int thousandths);
  }

  private Divider(
      String key, int orientation, JComponent one, JComponent other, double usual, Memory memory) {
    super(orientation, true, one, other);
    this.key = key;
    this.memory = memory;
    this.share = memory.place(key).orElse((int) Math.round(usual * THOUSAND));
    setBorder(BorderFactory.createEmptyBorder());
    setOpaque(false);
    setResizeWeight(usual);
    one.setMinimumSize(new Dimension(120, 80));
    other.setMinimumSize(new Dimension(120, 60));
    leaveRegionsAlone();
    When.resized(this, this::place);
    // a region that was hidden took no room; it gets its share again when it comes back
    When.shown(one, this::place);
    When.shown(other, this::place);
    addPropertyChangeListener(DIVIDER_LOCATION_PROPERTY, e -> movedByKey());
    listenToMouse();
  }

  /** F6 goes through the regions of the whole window, and not only through these two. */
  private void leaveRegionsAlone() {
    getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("F6"), "none");
  }

  /**
   * Two regions side by side.
   *
   * @param key by which the place of the divider is remembered
   * @param usual the left region's share of the width, 0 to 1
   */
  public static Divider beside(
      String key, JComponent left, JComponent right, double usual, Memory memory) {
    return new Divider(key, HORIZONTAL_SPLIT, left, right, usual, memory);
  }

  /**
   * Two regions one below the other.
   *
   * @param key by which the place of the divider is remembered
   * @param usual the upper region's share of the height, 0 to 1
   */
  public static Divider below(
      String key, JComponent above, JComponent below, double usual, Memory memory) {
    return new Divider(key, VERTICAL_SPLIT, above, below, usual, memory);
  }

  private int room() {
    return (getOrientation() == HORIZONTAL_SPLIT ? getWidth() : getHeight()) - getDividerSize();
  }

  private void movedByKey() {
    if (memory != null && isFocusOwner()) {
      keep();
    }
  }

  private void keep() {
    if (room() > 0) {
      share = getDividerLocation() * THOUSAND / room();
      memory.remember(key, share);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    listenToMouse();
  }

  private void listenToMouse() {
    if (memory != null && getUI() instanceof BasicSplitPaneUI ui) {
      ui.getDivider().addMouseListener(new Drags());
    }
  }

  private final class Drags extends MouseAdapter {
    @Override
    public void mouseReleased(MouseEvent e) {
      keep();
    }
  }

  private void place() {
    if (room() > 0) {
      int least = UIScale.scale(getOrientation() == HORIZONTAL_SPLIT ? LEAST_WIDTH : LEAST_HEIGHT);
      int place = Math.max(least, room() * share / THOUSAND);
      setDividerLocation(Math.min(place, Math.max(0, room() - least)));
    }
  }
}
