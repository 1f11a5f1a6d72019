package limberboard.bench;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Frame;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import limberboard.desktop.DesktopApp;
import limberboard.library.file.FailureLog;
import limberboard.library.file.LastNet;
import limberboard.library.file.WorkspaceFolders;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the window takes to be there with the demo workspace, in a cold program, and how long
 * one letter typed into the search field keeps the event thread. Needs a display.
 */
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WindowBench {
  private static final WorkspaceFolders DEMO = new WorkspaceFolders(Path.of(""));
  private static final LastNet NET = new LastNet(FailureLog.nowhere());

  /** From the call to the frame showing and the event thread free again. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Fork(value = 5, jvmArgsAppend = "-Djmh.shutdownTimeout=1")
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public Frame windowIsThere() throws InterruptedException, InvocationTargetException {
    DesktopApp.open(DEMO, NET);
    return waitFor(Component::isShowing);
  }

  /** From the call until the boats can be chosen: the workspace has been read. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Fork(value = 5, jvmArgsAppend = "-Djmh.shutdownTimeout=1")
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public Frame boatsCanBeChosen() throws InterruptedException, InvocationTargetException {
    DesktopApp.open(DEMO, NET);
    return waitFor(frame -> find(frame, WindowBench::hasBoats).isPresent());
  }

  /** An open window with its search field. */
  @State(Scope.Benchmark)
  public static class Typing {
    private static final String SENTENCE = "hydrolic oil leek in the keel compartment ";
    private JTextField field;
    private int typed;

    /** Opens the window and waits until the workspace has been read. */
    @Setup
    public void open() throws InterruptedException, InvocationTargetException {
      DesktopApp.open(DEMO, NET);
      Frame frame = waitFor(shown -> find(shown, WindowBench::hasBoats).isPresent());
      field = (JTextField) find(frame, JTextField.class::isInstance).orElseThrow();
    }

    void type() {
      typed = typed % SENTENCE.length() + 1;
      field.setText(SENTENCE.substring(0, typed));
    }
  }

  /** One letter more, until the event thread is free for the next. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  @Fork(value = 1, jvmArgsAppend = "-Djmh.shutdownTimeout=1")
  @Warmup(iterations = 2, time = 3)
  @Measurement(iterations = 3, time = 5)
  public void letterTyped(Typing typing) throws InterruptedException, InvocationTargetException {
    EventQueue.invokeAndWait(typing::type);
    EventQueue.invokeAndWait(() -> {});
  }

  private static boolean hasBoats(Component component) {
    return component instanceof JComboBox<?> chooser && chooser.getItemCount() > 1;
  }

  private static Frame waitFor(Predicate<Frame> there)
      throws InterruptedException, InvocationTargetException {
    while (true) {
      EventQueue.invokeAndWait(() -> {});
      for (Frame frame : Frame.getFrames()) {
        if (there.test(frame)) {
          return frame;
        }
      }
      TimeUnit.MILLISECONDS.sleep(1);
    }
  }

  private static Optional<Component> find(Container in, Predicate<Component> wanted) {
    for (Component child : in.getComponents()) {
      if (wanted.test(child)) {
        return Optional.of(child);
      }
      Optional<Component> deeper =
          child instanceof Container inner ? find(inner, wanted) : Optional.empty();
      if (deeper.isPresent()) {
        return deeper;
      }
    }
    return Optional.empty();
  }
}
