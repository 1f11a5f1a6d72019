package limberboard.desktop.window;

import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import limberboard.desktop.base.Settings;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;

/** The menu of how things are shown: theme, text size, units. */
final class ViewMenu {
  private final Settings settings;

  ViewMenu(Settings settings) {
    this.settings = settings;
  }

  /** Puts theme, text size and units into a menu, as they stand now. */
  void fill(JMenu menu) {
    addThemes(menu);
    menu.addSeparator();
    addTextSizes(menu);
    menu.addSeparator();
    JCheckBoxMenuItem imperial =
        new JCheckBoxMenuItem("Imperial units beside the metric ones", settings.imperial());
    imperial.addActionListener(e -> settings.imperial(imperial.isSelected()));
    menu.add(imperial);
  }

  private void addThemes(JMenu menu) {
    ButtonGroup group = new ButtonGroup();
    for (ThemeChoice theme : ThemeChoice.values()) {
      JMenuItem item =
          new JRadioButtonMenuItem(theme.title() + " theme", theme == settings.theme());
      item.setName("theme-" + theme.name());
      item.addActionListener(e -> settings.theme(theme));
      group.add(item);
      menu.add(item);
    }
  }

  private void addTextSizes(JMenu menu) {
    ButtonGroup group = new ButtonGroup();
    for (int percent : Theme.TEXT_SIZES) {
      JMenuItem item =
          new JRadioButtonMenuItem("Text " + percent + " %", percent == settings.textPercent());
      item.addActionListener(e -> settings.textPercent(percent));
      group.add(item);
      menu.add(item);
    }
  }

  /** Makes text larger (1) or smaller (-1) by one step. */
  void step(int by) {
    settings.stepText(by);
  }

  /** Makes text as large as usual. */
  void usual() {
    settings.textPercent(Theme.TEXT_SIZES.get(0));
  }
}
