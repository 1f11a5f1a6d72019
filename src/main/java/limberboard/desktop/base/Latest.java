package limberboard.desktop.base;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/**
 * Work of which only the newest outcome counts: outcomes of older work are dropped. For the event
 * thread only.
 */
public final class Latest {
  private final Background background;
  private long newest;

  /** Work run by this background. */
  public Latest(Background background) {
    this.background = background;
  }

  /** Like {@link Background#run}, but the outcome is dropped if newer work has been given since. */
  public <T> void run(String doing, Callable<? extends T> work, Consumer<? super T> done) {
    run(doing, work, done, () -> {});
  }

  /** The same with something to be done when the work fails and nothing newer has been given. */
  public <T> void run(
      String doing, Callable<? extends T> work, Consumer<? super T> done, Runnable failed) {
    long mine = ++newest;
    background.<T>run(
        doing,
        work,
        outcome -> {
          if (mine == newest) {
            done.accept(outcome);
          }
        },
        () -> {
          if (mine == newest) {
            failed.run();
          }
        });
  }

  /** Drops the outcome of everything given so far. */
  public void drop() {
    newest++;
  }
}
