package limberboard.desktop.base;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;

/**
 * Runs slow work off the event thread and brings its outcome back to it. While work runs, what it
 * does is an {@link Activity}; when it fails, the failure becomes a notice.
 */
public final class Background {
  private final Executor worker;
  private final Executor eventThread;
  private final Activity activity;
  private final Notices notices;

  /**
   * A background.
   *
   * @param worker runs the work
   * @param eventThread runs what is to be done with the outcome
   * @param activity is told what is being done
   * @param notices is told of failures
   */
  public Background(Executor worker, Executor eventThread, Activity activity, Notices notices) {
    this.worker = worker;
    this.eventThread = eventThread;
    this.activity = activity;
    this.notices = notices;
  }

  /**
   * Runs work and hands its outcome on. Called on the event thread. Once the window has been closed
   * and its workers with it, work is no longer taken.
   *
   * @param doing what is being done, as a person reads it: "Reading the library"
   * @param work the work, off the event thread
   * @param done takes the outcome, on the event thread
   */
  public <T> void run(String doing, Callable<? extends T> work, Consumer<? super T> done) {
    run(doing, work, done, () -> {});
  }

  /**
   * The same with something to be done when the work fails, on the event thread, before the failure
   * is shown.
   *
   * @param doing what is being done, as a person reads it
   * @param work the work, off the event thread
   * @param done takes the outcome, on the event thread
   * @param failed puts right what waited for the outcome
   */
  public <T> void run(
      String doing, Callable<? extends T> work, Consumer<? super T> done, Runnable failed) {
    Object token = activity.begin(doing);
    try {
      worker.execute(() -> attempt(doing, work, done, failed, token));
    } catch (RejectedExecutionException e) {
      activity.end(token);
    }
  }

  private <T> void attempt(
      String doing,
      Callable<? extends T> work,
      Consumer<? super T> done,
      Runnable failed,
      Object token) {
    try {
      T outcome = work.call();
      eventThread.execute(
          () -> {
            activity.end(token);
            done.accept(outcome);
          });
    } catch (Exception | Error e) {
      eventThread.execute(
          () -> {
            activity.end(token);
            failed.run();
            notices.failure(doing, e);
          });
    }
  }
}
