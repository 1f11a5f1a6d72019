package limberboard.desktop.parts;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys that do something. */
public final class Keys {
  private Keys() {}

  /**
   * A key that works while the component has the focus.
   *
   * @param key as {@link KeyStroke#getKeyStroke(String)} reads it: {@code "alt LEFT"}
   */
  public static void focused(JComponent component, String key, Runnable action) {
    bind(component, JComponent.WHEN_FOCUSED, key, action);
  }

  /** A key that works while the component or something in it has the focus. */
  public static void within(JComponent component, String key, Runnable action) {
    bind(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, key, action);
  }

  /** A key that works in the whole window. */
  public static void everywhere(JComponent component, String key, Runnable action) {
    bind(component, JComponent.WHEN_IN_FOCUSED_WINDOW, key, action);
  }

  private static void bind(JComponent component, int condition, String key, Runnable action) {
    KeyStroke stroke = KeyStroke.getKeyStroke(key);
    if (stroke == null) {
      throw new IllegalArgumentException("no such key: " + key);
    }
    component.getInputMap(condition).put(stroke, key);
    component
        .getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent e) {
                action.run();
              }
            });
  }
}
