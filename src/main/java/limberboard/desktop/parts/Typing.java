package limberboard.desktop.parts;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Follows what is typed. */
public final class Typing {
  private Typing() {}

  /** Calls the action after each change of the text, whoever makes it. */
  public static void into(JTextComponent field, Runnable action) {
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
}
