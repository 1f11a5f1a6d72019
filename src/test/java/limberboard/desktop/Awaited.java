package limberboard.desktop;

import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;

/** Executors of which one can ask whether anything given to them is still to be done. */
final class Awaited {
  private final AtomicInteger open = new AtomicInteger();

  /** The same executor, with its tasks counted. */
  Executor counting(Executor executor) {
    return task -> {
      open.incrementAndGet();
      try {
        executor.execute(() -> run(task));
      } catch (RejectedExecutionException e) {
        open.decrementAndGet();
        throw e;
      }
    };
  }

  private void run(Runnable task) {
    try {
      task.run();
    } finally {
      open.decrementAndGet();
    }
  }

  /** Whether nothing is being done or waits to be done. */
  boolean isDone() {
    return open.get() == 0;
  }
}
