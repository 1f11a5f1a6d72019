package limberboard.desktop.write.symptom;

import java.awt.KeyboardFocusManager;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;

/**
 * Hands keys on to where they are meant. The focus moves a moment after it is asked for, and
 * somebody who types fast has pressed the next key by then.
 */
final class KeysOn extends KeyAdapter {
  private final JComponent meant;
  private final BooleanSupplier now;

  /**
   * Keys of a component that are meant for another.
   *
   * @param meant the other one
   * @param now whether they are meant for it now
   */
  KeysOn(JComponent meant, BooleanSupplier now) {
    this.meant = meant;
    this.now = now;
  }

  @Override
  public void keyPressed(KeyEvent e) {
    handOn(e);
  }

  @Override
  public void keyTyped(KeyEvent e) {
    handOn(e);
  }

  private void handOn(KeyEvent e) {
    if (now.getAsBoolean()) {
      KeyEvent other =
          new KeyEvent(
              meant,
              e.getID(),
              e.getWhen(),
              e.getModifiersEx(),
              e.getKeyCode(),
              e.getKeyChar(),
              e.getKeyLocation());
      KeyboardFocusManager.getCurrentKeyboardFocusManager().redispatchEvent(meant, other);
      e.consume();
    }
  }
}
