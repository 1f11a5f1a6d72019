package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.HierarchyEvent;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** What is done when something happens to a component. */
public final class When {
  private When() {}

  /** After each change of the text, whoever makes it. */
  public static void typed(JTextComponent field, Runnable action) {
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent e) {
                action.run();
              }

              @Override
              public void removeUpdate(DocumentEvent e) {
                action.run();
              }

              @Override
              public void changedUpdate(DocumentEvent e) {
                action.run();
              }
            });
  }

  /** After each change of the size. */
  public static void resized(Component component, Runnable action) {
    component.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            action.run();
          }
        });
  }

  /** After each change of the width: for what has heights that depend on it. */
  public static void widened(Component component, Runnable action) {
    int[] before = {0};
    resized(
        component,
        () -> {
          if (component.getWidth() != before[0]) {
            before[0] = component.getWidth();
            action.run();
          }
        });
  }

  /** Each time that it is made visible after it was hidden. */
  public static void shown(Component component, Runnable action) {
    component.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentShown(ComponentEvent e) {
            action.run();
          }
        });
  }

  /** Each time that it comes into sight or goes out of it. */
  public static void showing(Component component, Runnable action) {
    component.addHierarchyListener(
        e -> {
          if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
            action.run();
          }
        });
  }

  /** Each time that it gets the focus. */
  public static void focused(Component component, Runnable action) {
    component.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            action.run();
          }
        });
  }
}
