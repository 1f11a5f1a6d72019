package limberboard.desktop.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.GraphicsEnvironment;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.lang.ref.WeakReference;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OnceFrameTest {
  private static final int WINDOWS = 5;
  private static final int TURNS = 100;
  private static final long TURN = 50;

  /** So much that windows are held that ought not to be. */
  private final List<WeakReference<byte[]>> behind = new ArrayList<>();

  @BeforeEach
  void display() {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(), "There is no display, so no window is tested.");
  }

  /** A window with keys of its own and of a button, behind which there is something. */
  private JFrame shown() {
    byte[] something = new byte[1];
    behind.add(new WeakReference<>(something));
    JFrame frame = new OnceFrame("Once");
    JButton button = new JButton("Go");
    button.setMnemonic('G');
    button.addActionListener(e -> something[0]++);
    JPanel content = new JPanel();
    content.add(button);
    frame.setContentPane(content);
    frame
        .getRootPane()
        .registerKeyboardAction(
            e -> something[0]++, KeyStroke.getKeyStroke("F6"), JComponent.WHEN_IN_FOCUSED_WINDOW);
    frame.getRootPane().setDefaultButton(button);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            something[0]++;
          }
        });
    frame.pack();
    frame.setVisible(true);
    return frame;
  }

  /** The last window may be held for a while, as that which was painted last. */
  @Test
  void nothingHoldsWhatWasBehindClosedWindowsThoughTheLookIsRenewed()
      throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(
        () -> {
          List<JFrame> frames = new ArrayList<>();
          for (int i = 0; i < WINDOWS; i++) {
            frames.add(shown());
            frames.get(i).dispose();
            frames.forEach(SwingUtilities::updateComponentTreeUI);
          }
        });
    for (int turn = 0; turn < TURNS && held() > 1; turn++) {
      System.gc();
      TimeUnit.MILLISECONDS.sleep(TURN);
    }
    assertThat(held()).isLessThanOrEqualTo(1);
  }

  private long held() {
    return behind.stream().filter(each -> each.get() != null).count();
  }
}
