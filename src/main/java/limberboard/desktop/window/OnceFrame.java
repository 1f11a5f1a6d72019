package limberboard.desktop.window;

import java.awt.Container;
import java.util.Arrays;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JRootPane;

/**
 * A frame that is empty once it is closed. When the look changes, Swing brings it to windows that
 * were closed, too, which enters the keys of all they show with Swing's keyboard manager once more,
 * and that holds the window and all behind it for as long as the program runs.
 */
final class OnceFrame extends JFrame {
  private static final long serialVersionUID = 1L;

  OnceFrame(String title) {
    super(title);
  }

  @Override
  public void dispose() {
    super.dispose();
    JRootPane root = getRootPane();
    setJMenuBar(null);
    setContentPane(new JPanel());
    setGlassPane(new JPanel());
    root.setDefaultButton(null);
    forgetKeys(root);
    Container layers = root.getLayeredPane();
    Arrays.stream(layers.getComponents())
        .filter(each -> each != getContentPane())
        .forEach(layers::remove);
    Arrays.stream(getWindowListeners()).forEach(this::removeWindowListener);
  }

  private static void forgetKeys(JRootPane root) {
    root.resetKeyboardActions();
    root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).clear();
    root.getActionMap().clear();
  }
}
