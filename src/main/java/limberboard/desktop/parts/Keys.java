package limberboard.desktop.parts;

import static java.awt.event.InputEvent.META_DOWN_MASK;

import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Collection;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/**
 * Keys that do something. Where a key is named {@code control}, the platform's own key for commands
 * is meant, which on some is another.
 */
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

  /** Two keys that move the focus to the next and the one before of these, round and round. */
  public static void step(
      JComponent within, String next, String before, Collection<? extends JComponent> stops) {
    within(within, next, () -> step(List.copyOf(stops), 1));
    within(within, before, () -> step(List.copyOf(stops), -1));
  }

  private static void step(List<? extends JComponent> stops, int by) {
    stops.stream()
        .filter(JComponent::isFocusOwner)
        .findFirst()
        .map(at -> stops.get(Math.floorMod(stops.indexOf(at) + by, stops.size())))
        .ifPresent(JComponent::requestFocusInWindow);
  }

  /**
   * The key by the platform's habits.
   *
   * @throws IllegalArgumentException when there is no such key
   */
  public static KeyStroke stroke(String key) {
    boolean command = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx() == META_DOWN_MASK;
    KeyStroke stroke = KeyStroke.getKeyStroke(command ? key.replace("control", "meta") : key);
    if (stroke == null) {
      throw new IllegalArgumentException("no such key: " + key);
    }
    return stroke;
  }

  /** A key as a person reads it: "Ctrl+F". */
  public static String spoken(String key) {
    KeyStroke stroke = stroke(key);
    String held = InputEvent.getModifiersExText(stroke.getModifiers());
    String pressed = KeyEvent.getKeyText(stroke.getKeyCode());
    return held.isEmpty() ? pressed : held + "+" + pressed;
  }

  private static void bind(JComponent component, int condition, String key, Runnable action) {
    KeyStroke stroke = stroke(key);
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
