package limberboard.desktop.parts;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.event.InputEvent;
import java.awt.event.InputMethodEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.AbstractDocument;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;

/**
 * Undoes and redoes what a person typed into one text component. What the program puts there cannot
 * be undone by typing keys, and takes what was typed before with it.
 */
final class FieldTyping implements DocumentListener {
  private static final Object PROPERTY = FieldTyping.class;
  private final JTextComponent component;
  private final TypingSteps steps;
  private Optional<AWTEvent> last = Optional.empty();
  private boolean applying;
  private boolean byHand;

  private FieldTyping(JTextComponent component) {
    this.component = component;
    this.steps = new TypingSteps(component.getText());
    component.getDocument().addDocumentListener(this);
    component.addPropertyChangeListener(
        "document",
        e -> {
          steps.replaced(component.getText());
          component.getDocument().addDocumentListener(this);
        });
  }

  /** The typing of a component, watched from the first call on. */
  static FieldTyping of(JTextComponent component) {
    if (component.getClientProperty(PROPERTY) instanceof FieldTyping known) {
      return known;
    }
    FieldTyping typing = new FieldTyping(component);
    component.putClientProperty(PROPERTY, typing);
    return typing;
  }

  /** Does something that counts as typing, such as a choice from the menu. */
  void byHand(Runnable action) {
    byHand = true;
    try {
      action.run();
    } finally {
      byHand = false;
    }
  }

  /** Puts another text in the place of this one, as if it had been typed. */
  void put(String text) {
    byHand(
        () -> {
          TextChange change = TextChange.between(component.getText(), text);
          try {
            if (component.getDocument() instanceof AbstractDocument document) {
              document.replace(change.at(), change.removed(), change.inserted(), null);
            } else {
              component.setText(text);
            }
          } catch (BadLocationException e) {
            component.setText(text);
          }
        });
  }

  boolean canUndo() {
    return component.isEditable() && steps.canUndo();
  }

  boolean canRedo() {
    return component.isEditable() && steps.canRedo();
  }

  /** Undoes the last step, if there is one. */
  void undo() {
    if (canUndo()) {
      steps.undo().ifPresent(this::apply);
    }
  }

  /** Does the step again that was undone last, if there is one. */
  void redo() {
    if (canRedo()) {
      steps.redo().ifPresent(this::apply);
    }
  }

  private void apply(TypingSteps.Typed wanted) {
    applying = true;
    try {
      TextChange change = TextChange.between(component.getText(), wanted.text());
      if (component.getDocument() instanceof AbstractDocument document) {
        document.replace(change.at(), change.removed(), change.inserted(), null);
      } else {
        component.setText(wanted.text());
      }
      component.setCaretPosition(Math.min(wanted.caret(), component.getDocument().getLength()));
    } catch (BadLocationException e) {
      component.setText(wanted.text());
    } finally {
      applying = false;
    }
  }

  private void changed() {
    if (applying) {
      return;
    }
    Optional<AWTEvent> event = Optional.ofNullable(EventQueue.getCurrentEvent());
    if (byHand || event.filter(this::isTyping).isPresent()) {
      steps.typed(component.getText(), event.isPresent() && event.equals(last));
      last = event;
    } else {
      steps.replaced(component.getText());
      last = Optional.empty();
    }
  }

  private boolean isTyping(AWTEvent event) {
    return (event instanceof InputEvent || event instanceof InputMethodEvent)
        && event.getSource() instanceof Component source
        && SwingUtilities.isDescendingFrom(source, component);
  }

  @Override
  public void insertUpdate(DocumentEvent e) {
    changed();
  }

  @Override
  public void removeUpdate(DocumentEvent e) {
    changed();
  }

  @Override
  public void changedUpdate(DocumentEvent e) {
    // looks only
  }
}
