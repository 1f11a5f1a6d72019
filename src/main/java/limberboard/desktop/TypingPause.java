package limberboard.desktop;

import javax.swing.Timer;
import limberboard.desktop.base.Delay;

/** Waits for a pause in typing, on the event thread. */
final class TypingPause implements Delay {
  private final int milliseconds;
  private Timer waiting;

  TypingPause(int milliseconds) {
    this.milliseconds = milliseconds;
  }

  @Override
  public void restart(Runnable action) {
    if (waiting != null) {
      waiting.stop();
    }
    waiting = new Timer(milliseconds, e -> action.run());
    waiting.setRepeats(false);
    waiting.start();
  }
}
