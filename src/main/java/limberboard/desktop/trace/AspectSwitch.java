package limberboard.desktop.trace;

import java.util.EnumMap;
import java.util.Map;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.Keys;

/** Chooses what is looked at: the next step, why, the whole tree. */
final class AspectSwitch extends JPanel {
  private static final int GAP = 6;
  private final transient Aspects aspects;
  private final ButtonGroup group = new ButtonGroup();
  private final Map<Aspect, JToggleButton> buttons = new EnumMap<>(Aspect.class);

  AspectSwitch(Aspects aspects) {
    setLayout(new BoxLayout(this, BoxLayout.LINE_AXIS));
    this.aspects = aspects;
    setOpaque(false);
    getAccessibleContext().setAccessibleName("What is looked at");
    for (Aspect aspect : Aspect.values()) {
      if (!aspect.isChosen()) {
        continue;
      }
      JToggleButton button = new JToggleButton(aspect.title());
      button.setName("look-" + aspect.name().toLowerCase(java.util.Locale.ROOT));
      button.setMnemonic(aspect.mnemonic());
      button.addActionListener(e -> aspects.look(aspect));
      Keys.focused(button, "ENTER", button::doClick);
      group.add(button);
      buttons.put(aspect, button);
      add(button);
      add(Box.createHorizontalStrut(GAP));
    }
    aspects.onChange(this::refresh);
    refresh();
  }

  void refresh() {
    if (aspects.now().isChosen()) {
      buttons.get(aspects.now()).setSelected(true);
    } else {
      group.clearSelection();
    }
    buttons.forEach((aspect, button) -> button.setEnabled(aspects.isOffered(aspect)));
  }
}
