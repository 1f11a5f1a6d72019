package limberboard.desktop.parts;

import java.awt.AWTEvent;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.AWTEventListenerProxy;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.stream.Stream;
import javax.swing.JPasswordField;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;

/**
 * What every text component of the program has, whoever made it: undo and redo of typing, and a
 * menu of its own. A component gets them when it is first given the focus or pointed at. For the
 * event thread only.
 */
public final class TextHabits implements AWTEventListener {
  private static final Object PROPERTY = TextHabits.class;

  private TextHabits() {}

  /** Gives every text component its habits from now on; more than one call does no harm. */
  public static void install() {
    Toolkit toolkit = Toolkit.getDefaultToolkit();
    boolean there =
        Stream.of(toolkit.getAWTEventListeners(AWTEvent.FOCUS_EVENT_MASK))
            .anyMatch(TextHabits::isOurs);
    if (!there) {
      toolkit.addAWTEventListener(
          new TextHabits(), AWTEvent.FOCUS_EVENT_MASK | AWTEvent.MOUSE_EVENT_MASK);
    }
  }

  /** Puts another text into a component as if a person had typed it: undo takes it back. */
  public static void put(JTextComponent component, String text) {
    habits(component);
    FieldTyping.of(component).put(text);
  }

  private static boolean isOurs(AWTEventListener listener) {
    return listener instanceof TextHabits
        || (listener instanceof AWTEventListenerProxy proxy
            && proxy.getListener() instanceof TextHabits);
  }

  @Override
  public void eventDispatched(AWTEvent event) {
    if (!(event.getSource() instanceof JTextComponent text) || text instanceof JPasswordField) {
      return;
    }
    if (event.getID() == FocusEvent.FOCUS_GAINED) {
      habits(text);
    } else if (event instanceof MouseEvent mouse
        && mouse.isPopupTrigger()
        && !mouse.isConsumed()
        && text.isFocusable()
        && text.getComponentPopupMenu() == null) {
      habits(text);
      pointed(text, mouse.getPoint());
      mouse.consume();
    }
  }

  private static void habits(JTextComponent text) {
    if (text.getClientProperty(PROPERTY) != null) {
      return;
    }
    text.putClientProperty(PROPERTY, true);
    FieldTyping typing = FieldTyping.of(text);
    if (text.isEditable()) {
      Keys.focused(text, "control Z", typing::undo);
      Keys.focused(text, "control shift Z", typing::redo);
      Keys.focused(text, "control Y", typing::redo);
    }
    Keys.focused(text, "CONTEXT_MENU", () -> atCaret(text));
    Keys.focused(text, "shift F10", () -> atCaret(text));
  }

  /** A click on what is selected keeps it selected; one beside it puts the caret there. */
  private static void pointed(JTextComponent text, Point at) {
    int place = text.viewToModel2D(at);
    if (place < text.getSelectionStart() || place > text.getSelectionEnd()) {
      text.setCaretPosition(place);
    }
    text.requestFocusInWindow();
    TextMenu.of(text).show(text, at.x, at.y);
  }

  private static void atCaret(JTextComponent text) {
    Point at = new Point(0, text.getHeight());
    try {
      Rectangle2D caret = text.modelToView2D(text.getCaretPosition());
      if (caret != null) {
        Rectangle seen = caret.getBounds();
        at = new Point(seen.x, seen.y + seen.height);
      }
    } catch (BadLocationException e) {
      // the menu then opens below the component
    }
    TextMenu.of(text).show(text, at.x, at.y);
  }
}
