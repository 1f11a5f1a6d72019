package limberboard.desktop.trace;

import java.awt.FlowLayout;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.Keys;

/** Chooses what is looked at: the next step, why, the whole tree. */
final class AspectSwitch extends JPanel {
  private final transient Aspects aspects;
  private final Map<Aspect, JToggleButton> buttons = new EnumMap<>(Aspect.class);

  AspectSwitch(Aspects aspects) {
    super(new FlowLayout(FlowLayout.LEADING, 4, 0));
    this.aspects = aspects;
    setOpaque(false);
    getAccessibleContext().setAccessibleName("What is looked at");
    ButtonGroup group = new ButtonGroup();
    for (Aspect aspect : Aspect.values()) {
      JToggleButton button = new JToggleButton(aspect.title());
      button.setName("look-" + aspect.name().toLowerCase(java.util.Locale.ROOT));
      button.setMnemonic(aspect.mnemonic());
      button.addActionListener(e -> aspects.look(aspect));
      Keys.focused(button, "ENTER", button::doClick);
      group.add(button);
      buttons.put(aspect, button);
      add(button);
    }
    aspects.onChange(this::refresh);
    refresh();
  }

  void refresh() {
    buttons.get(aspects.now()).setSelected(true);
    buttons.forEach((aspect, button) -> button.setEnabled(aspects.isOffered(aspect)));
  }
}
