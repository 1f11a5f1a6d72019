package limberboard.desktop.parts;

import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import limberboard.desktop.base.View;

/** Chooses what of a place is looked at. Left and Right go from one to the next. */
public final class AspectButtons extends JPanel {
  private static final int GAP = 6;
  private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();

  /**
   * Buttons.
   *
   * @param place before the names of the buttons
   * @param aspects what can be looked at, one a button
   * @param look shows one
   */
  public AspectButtons(String place, List<? extends View> aspects, Consumer<View> look) {
    super(new java.awt.BorderLayout());
    setOpaque(false);
    getAccessibleContext().setAccessibleName("What is looked at");
    ButtonGroup group = new ButtonGroup();
    for (View aspect : aspects) {
      JToggleButton button = new JToggleButton(aspect.name().title());
      button.setName(place + "-" + aspect.id());
      button.setMnemonic(aspect.name().mnemonic());
      button.addActionListener(e -> look.accept(aspect));
      Keys.focused(button, "ENTER", button::doClick);
      group.add(button);
      buttons.put(aspect.id(), button);
    }
    add(Row.wrapping(GAP, buttons.values().toArray(JComponent[]::new)));
    Keys.step(this, "RIGHT", "LEFT", buttons.values());
  }

  /** Shows the button of an aspect, or not; whether that changed anything. */
  public boolean offer(String aspect, boolean shown) {
    JToggleButton button = buttons.get(aspect);
    boolean changed = button.isVisible() != shown;
    button.setVisible(shown);
    return changed;
  }

  /** Marks the one that is looked at. */
  public void mark(View aspect) {
    buttons.get(aspect.id()).setSelected(true);
  }

  /** As wide as all buttons in a line while nothing narrower is asked for. */
  @Override
  public Dimension getPreferredSize() {
    int width = 0;
    int height = 0;
    for (JToggleButton button : buttons.values()) {
      if (!button.isVisible()) {
        continue;
      }
      Dimension size = button.getPreferredSize();
      width += size.width + (width == 0 ? 0 : GAP);
      height = Math.max(height, size.height);
    }
    int lines = getWidth() > 0 && getWidth() < width ? 2 : 1;
    return new Dimension(width, lines * height + (lines - 1) * GAP);
  }
}
