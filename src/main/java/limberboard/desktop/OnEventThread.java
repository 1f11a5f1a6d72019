package limberboard.desktop;

import java.awt.EventQueue;
import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Does things on the event thread and waits for them; at once when called there. */
final class OnEventThread {
  private OnEventThread() {}

  /** Does something at once when called there, otherwise as soon as it is its turn. */
  static void soon(Runnable action) {
    if (EventQueue.isDispatchThread()) {
      action.run();
    } else {
      EventQueue.invokeLater(action);
    }
  }

  /**
   * Does something.
   *
   * @throws IOException when it fails
   */
  static void run(Runnable action) throws IOException {
    get(
        () -> {
          action.run();
          return true;
        });
  }

  /**
   * Does something and hands back what comes of it.
   *
   * @throws IOException when it fails
   */
  static <T> T get(Callable<T> step) throws IOException {
    FutureTask<T> task = new FutureTask<>(step);
    if (EventQueue.isDispatchThread()) {
      task.run();
    } else {
      EventQueue.invokeLater(task);
    }
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("the window was not driven to the end", e);
    } catch (ExecutionException e) {
      throw new IOException("the window could not be driven: " + e.getCause(), e);
    }
  }
}
