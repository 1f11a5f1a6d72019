package limberboard.desktop.look;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;

/**
 * Shows the text of labels, buttons, menus, list entries and tool tips as it was written. Swing
 * takes a text that begins with {@code <html>} for a page, renders it and fetches its pictures;
 * here that is switched off for each component before it gets its looks, in this one place. Called
 * by Swing; for the event thread only.
 */
public final class TextAsWritten extends ComponentUI {
  /** What Swing reads before it takes a text for a page. */
  private static final String NO_HTML = "html.disable";

  private static final List<String> WITH_TEXT =
      List.of(
          "LabelUI",
          "ButtonUI",
          "ToggleButtonUI",
          "CheckBoxUI",
          "RadioButtonUI",
          "MenuItemUI",
          "MenuUI",
          "CheckBoxMenuItemUI",
          "RadioButtonMenuItemUI",
          "TabbedPaneUI",
          "ToolTipUI");

  private TextAsWritten() {}

  /** Holds from now on for every component that is made, in any theme. */
  static void everywhere() {
    for (String id : WITH_TEXT) {
      UIManager.put(id, TextAsWritten.class.getName());
    }
  }

  /** The looks of the theme for a component, which shows its text as written from now on. */
  public static ComponentUI createUI(JComponent component) {
    component.putClientProperty(NO_HTML, true);
    return UIManager.getLookAndFeelDefaults().getUI(component);
  }
}
