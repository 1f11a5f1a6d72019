package limberboard.desktop.drills;

import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** Says how far slow work has come, and stops it or begins it again. */
final class DrillWaiting extends Column {
  private static final int MOMENT = 200;
  private final transient BooleanSupplier running;
  private final transient Supplier<String> soFar;
  private final transient Runnable stop;
  private final transient Runnable again;
  private final String doing;
  private final Wrapped title = Text.title("");
  private final Wrapped words = Text.plain("");
  private final JProgressBar bar = new JProgressBar();
  private final JButton button;
  private final transient Timer clock = new Timer(MOMENT, e -> count());

  /**
   * Nothing going on yet.
   *
   * @param doing what is being done: "The drill is being marked"
   * @param name of the button that stops it
   * @param running whether it goes on
   * @param soFar how far it has come, in words
   * @param stop stops it
   * @param again begins it again
   */
  DrillWaiting(
      String doing,
      String name,
      BooleanSupplier running,
      Supplier<String> soFar,
      Runnable stop,
      Runnable again) {
    super(10);
    this.doing = doing;
    this.running = running;
    this.soFar = soFar;
    this.stop = stop;
    this.again = again;
    button = Buttons.plain("", name, this::press);
    padded(24, 8, 8, 8);
    bar.setIndeterminate(true);
    bar.getAccessibleContext().setAccessibleName(doing);
    Column narrow = new Column(0).atMost(360);
    narrow.add(bar);
    add(title);
    add(words);
    add(narrow);
    add(Row.wrapping(8, button));
    refresh();
  }

  private void press() {
    (running.getAsBoolean() ? stop : again).run();
  }

  void refresh() {
    boolean goesOn = running.getAsBoolean();
    title.setText(doing + (goesOn ? "" : ": stopped"));
    bar.setVisible(goesOn);
    button.setText(goesOn ? "Stop" : "Go on");
    count();
    if (goesOn) {
      clock.start();
    } else {
      clock.stop();
    }
  }

  private void count() {
    words.setText(running.getAsBoolean() ? soFar.get() : "Nothing is lost.");
  }

  JComponent first() {
    return button;
  }
}
