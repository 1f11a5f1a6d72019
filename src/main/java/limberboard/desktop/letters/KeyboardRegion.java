package limberboard.desktop.letters;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** A region between which the keyboard goes to and fro. Stateless. */
final class KeyboardRegion {
  private KeyboardRegion() {}

  /**
   * Where the keyboard is somewhere in a region, that region; otherwise where work in it begins.
   */
  static JComponent of(JComponent region, JComponent first) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && SwingUtilities.isDescendingFrom(owner, region) ? region : first;
  }
}
