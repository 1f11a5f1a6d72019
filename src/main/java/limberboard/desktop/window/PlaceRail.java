package limberboard.desktop.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.LayoutManager2;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import limberboard.desktop.base.Place;
import limberboard.desktop.parts.Keys;
import net.miginfocom.swing.MigLayout;

/** The places, one below the other, with the one that is shown marked. */
final class PlaceRail extends JPanel {
  private static final int ROOMY = 18;
  private static final int TIGHT = 6;
  private static final String TIGHTLY = "margin: 3,2,3,2;";
  private static final String STYLE =
      "arc: 12; borderWidth: 0; background: null; margin: 10,2,8,2;"
          + " selectedBackground: $Limberboard.chosen; selectedForeground: $Limberboard.ink;"
          + " focusedBackground: null; iconTextGap: 5";
  private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
  private final transient Map<JToggleButton, Icon> icons = new LinkedHashMap<>();
  private boolean wordsOnly;
  private boolean tight;

  PlaceRail(List<Place> places, Consumer<Place> go) {
    super(new MigLayout("insets 10 8 10 8, flowy, fillx, gapy 6", "[grow,fill,88lp:88lp]"));
    setBorder(BorderFactory.createEmptyBorder());
    getAccessibleContext().setAccessibleName("Places");
    ButtonGroup group = new ButtonGroup();
    int number = 1;
    for (Place place : places) {
      JToggleButton button = button(place, number);
      button.addActionListener(e -> go.accept(place));
      group.add(button);
      buttons.put(place.id(), button);
      icons.put(button, place.icon());
      add(button);
      Keys.everywhere(this, "control " + number, button::doClick);
      number++;
    }
    Keys.step(this, "DOWN", "UP", buttons.values());
  }

  /**
   * Where the height is too little for drawings and words, the words stay; where it is too little
   * for these, they stand closer together.
   */
  @Override
  public void doLayout() {
    boolean wanted = getHeight() > 0 && getHeight() < usualHeight() + iconHeight();
    if (wanted != wordsOnly) {
      wordsOnly = wanted;
      icons.forEach((button, icon) -> button.setIcon(wordsOnly ? null : icon));
      ((LayoutManager2) getLayout()).invalidateLayout(this);
    }
    boolean close = getHeight() > 0 && wordsOnly && getHeight() < usualHeight();
    if (close != tight) {
      tight = close;
      String style = tight ? STYLE + "; " + TIGHTLY : STYLE;
      icons.keySet().forEach(button -> button.putClientProperty("FlatLaf.style", style));
      ((LayoutManager2) getLayout()).invalidateLayout(this);
    }
    super.doLayout();
  }

  /** The height with the usual room around the words, as they stand now. */
  private int usualHeight() {
    int saved = tight ? buttons.size() * UIScale.scale(ROOMY - TIGHT) : 0;
    return getLayout().preferredLayoutSize(this).height + saved;
  }

  /** What the drawings would add. */
  private int iconHeight() {
    int height = 0;
    if (wordsOnly) {
      for (Map.Entry<JToggleButton, Icon> each : icons.entrySet()) {
        height += each.getValue().getIconHeight() + each.getKey().getIconTextGap();
      }
    }
    return height;
  }

  private static JToggleButton button(Place place, int number) {
    JToggleButton button = new JToggleButton(place.name().title(), place.icon());
    button.setVerticalTextPosition(SwingConstants.BOTTOM);
    button.setHorizontalTextPosition(SwingConstants.CENTER);
    button.setMnemonic(place.name().mnemonic());
    button.setToolTipText(place.name().title() + " (Ctrl+" + number + ")");
    button.putClientProperty("FlatLaf.style", STYLE);
    button.setName("place-" + place.id());
    Keys.focused(button, "ENTER", button::doClick);
    return button;
  }

  /** Marks the place that is shown. */
  void mark(String id) {
    buttons.get(id).setSelected(true);
  }

  /** The button of the place that is shown. */
  JComponent current() {
    return buttons.values().stream()
        .filter(JToggleButton::isSelected)
        .findFirst()
        .orElseGet(() -> buttons.values().iterator().next());
  }
}
