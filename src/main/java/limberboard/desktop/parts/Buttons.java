package limberboard.desktop.parts;

import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.SwingConstants;
import limberboard.desktop.look.LineIcon;

/** Buttons by rank. */
public final class Buttons {
  private static final int ANGLE = 12;

  private Buttons() {}

  /** An ordinary button. */
  public static JButton plain(String text, Runnable action) {
    JButton button = new JButton(text);
    button.addActionListener(e -> action.run());
    Keys.focused(button, "ENTER", button::doClick);
    return button;
  }

  /** An ordinary button with a name, by which tests and menus know it. */
  public static JButton plain(String text, String name, Runnable action) {
    return named(plain(text, action), name);
  }

  /** An ordinary button that says what it does when pointed at. */
  public static JButton plain(String text, String name, String tip, Runnable action) {
    JButton button = plain(text, name, action);
    button.setToolTipText(tip);
    return button;
  }

  private static JButton named(JButton button, String name) {
    button.setName(name);
    return button;
  }

  /** An entry of a menu that does what a button does, for when the button has no room. */
  public static JMenuItem item(JButton button) {
    JMenuItem item = new JMenuItem(button.getText());
    item.setName(button.getName());
    item.setToolTipText(button.getToolTipText());
    item.setEnabled(button.isEnabled());
    item.addActionListener(e -> button.doClick(0));
    return item;
  }

  /** An ordinary button that opens a menu below itself, with an angle that says so. */
  public static JButton menu(String text, Runnable open) {
    JButton button = plain(text, open);
    button.setIcon(LineIcon.below(ANGLE));
    button.setHorizontalTextPosition(SwingConstants.LEADING);
    return button;
  }

  /** The button for what is usually done next: in the accent colour. */
  public static JButton main(String text, Runnable action) {
    JButton button = plain(text, action);
    button.putClientProperty(
        "FlatLaf.style",
        "background: $Button.default.background; foreground: $Button.default.foreground;"
            + " hoverBackground: $Button.default.hoverBackground;"
            + " focusedBackground: $Button.default.focusedBackground;"
            + " pressedBackground: $Button.default.pressedBackground;"
            + " borderColor: $Button.default.borderColor");
    return button;
  }

  /** The same with a name. */
  public static JButton main(String text, String name, Runnable action) {
    return named(main(text, action), name);
  }

  /** A large button, for answers. */
  public static JButton large(String text, String name, Runnable action) {
    JButton button = plain(text, name, action);
    button.putClientProperty("FlatLaf.styleClass", "large");
    button.putClientProperty("FlatLaf.style", "margin: 9,20,9,20");
    return button;
  }

  /** A button that is a small drawing. */
  public static JButton icon(Icon icon, String name, Runnable action) {
    JButton button = plain("", action);
    button.setIcon(icon);
    button.setToolTipText(name);
    button.putClientProperty("FlatLaf.style", "margin: 5,8,5,8");
    button.getAccessibleContext().setAccessibleName(name);
    return button;
  }

  /** A button that reads like a link in running text. */
  public static JButton link(String text, Runnable action) {
    JButton button = plain(text, action);
    button.putClientProperty(
        "FlatLaf.style",
        "background: null; borderWidth: 0; margin: 2,4,2,4; foreground: $Limberboard.accent;"
            + " focusedBackground: null; hoverBackground: $Limberboard.chosen");
    return button;
  }
}
