package limberboard.desktop.parts;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.OptionalInt;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;

/** Two regions with a divider between them that can be moved and is remembered. */
public final class Divider extends JSplitPane {
  private static final int THOUSAND = 1000;
  private final double usual;
  private final transient Memory memory;
  private final String key;
  private boolean placed;

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
    this.usual = usual;
    this.memory = memory;
    setBorder(BorderFactory.createEmptyBorder());
    setOpaque(false);
    setResizeWeight(usual);
    one.setMinimumSize(new java.awt.Dimension(120, 80));
    other.setMinimumSize(new java.awt.Dimension(120, 60));
    addComponentListener(new FirstSize());
    addPropertyChangeListener(DIVIDER_LOCATION_PROPERTY, e -> moved());
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

  private void moved() {
    if (placed && room() > 0) {
      memory.remember(key, getDividerLocation() * THOUSAND / room());
    }
  }

  private final class FirstSize extends ComponentAdapter {
    @Override
    public void componentResized(ComponentEvent e) {
      if (!placed && room() > 0) {
        int thousandths = memory.place(key).orElse((int) Math.round(usual * THOUSAND));
        setDividerLocation(room() * thousandths / THOUSAND);
        placed = true;
      }
    }
  }
}
