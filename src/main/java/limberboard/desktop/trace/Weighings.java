package limberboard.desktop.trace;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;

/**
 * What is being worked out for each trace. Only the newest outcome of a trace counts, and no trace
 * is in another one's way. For the event thread only.
 */
final class Weighings {
  private final Background background;
  private final Map<TraceKey, Work> works = new HashMap<>();

  private static final class Work {
    private final Latest latest;
    private Optional<BoatTrace> wanted = Optional.empty();
    private boolean busy;

    Work(Background background) {
      this.latest = new Latest(background);
    }

    void over() {
      busy = false;
      wanted = Optional.empty();
    }
  }

  Weighings(Background background) {
    this.background = background;
  }

  /** Whether something is being worked out for a trace. */
  boolean isBusy(TraceKey key) {
    return works.containsKey(key) && works.get(key).busy;
  }

  /** How a trace will stand once what is being worked out for it is done. */
  Optional<BoatTrace> wanted(TraceKey key) {
    return works.containsKey(key) ? works.get(key).wanted : Optional.empty();
  }

  /**
   * Works something out for a trace in place of what was being worked out for it.
   *
   * @param wanted how the trace will stand, where that is known already
   * @param failed what is done when it fails
   */
  <T> void run(
      TraceKey key,
      Optional<BoatTrace> wanted,
      Callable<T> work,
      Consumer<T> done,
      Runnable failed) {
    Work mine = works.computeIfAbsent(key, unseen -> new Work(background));
    mine.busy = true;
    mine.wanted = wanted;
    mine.latest.<T>run(
        "Weighing the answers",
        work,
        outcome -> {
          mine.over();
          done.accept(outcome);
        },
        () -> {
          mine.over();
          failed.run();
        });
  }

  /** Drops what is being worked out for a trace. */
  void drop(TraceKey key) {
    if (works.containsKey(key)) {
      works.get(key).latest.drop();
      works.get(key).over();
    }
  }
}
