package limberboard.desktop.workspace.share;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import limberboard.sharing.HowFar;

/** Passes on to the event thread, now and then, how far sharing is; can stop it. Any thread. */
final class Progressing implements HowFar {
  private static final long PAUSE_NANOS = 80_000_000L;
  private final Executor event;
  private final Consumer<Step> told;
  private volatile boolean stopped;
  private long last;

  /**
   * How far it is.
   *
   * @param what what is being done
   * @param done how much of it is done
   * @param total how much there is; 0 when that is not known
   */
  record Step(String what, int done, int total) {}

  Progressing(Executor event, Consumer<Step> told) {
    this.event = event;
    this.told = told;
  }

  @Override
  public void step(String what, int done, int total) {
    long now = System.nanoTime();
    if (last == 0 || now - last > PAUSE_NANOS || total > 0 && done >= total) {
      last = now;
      event.execute(() -> told.accept(new Step(what, done, total)));
    }
  }

  @Override
  public boolean isStopped() {
    return stopped;
  }

  void stop() {
    stopped = true;
  }
}
