package limberboard.desktop.support;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;

/** Runs work when a test says so, on the test's own thread. */
public final class Steps implements Executor {
  private final Deque<Runnable> waiting = new ArrayDeque<>();

  @Override
  public void execute(Runnable work) {
    waiting.add(work);
  }

  /** How much work is waiting. */
  public int waiting() {
    return waiting.size();
  }

  /** Does the work that has waited longest. */
  public void next() {
    waiting.remove().run();
  }

  /** Does the work that has waited shortest. */
  public void last() {
    waiting.removeLast().run();
  }

  /** Does everything, also what comes up meanwhile. */
  public void all() {
    while (!waiting.isEmpty()) {
      next();
    }
  }

  /** A background whose work waits for the test's word. */
  public Background background() {
    return new Background(this, Runnable::run, new Activity(), new Notices());
  }

  /** A background that does everything at once. */
  public static Background atOnce() {
    return atOnce(new Notices());
  }

  /** A background that does everything at once and shows failures here. */
  public static Background atOnce(Notices notices) {
    return new Background(Runnable::run, Runnable::run, new Activity(), notices);
  }
}
