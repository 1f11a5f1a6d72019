package limberboard.desktop.drills;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import limberboard.drill.Counsel;
import limberboard.drill.DrillRun;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.DrillMarker;

/** A drill that is being marked; can be stopped from another thread. */
final class DrillMarking {
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final AtomicInteger steps = new AtomicInteger();

  /** The marks of a drill that is over; empty when it was stopped. */
  Optional<DrillMark> mark(DrillRun played) {
    DrillMarker marker = new DrillMarker(new Counsel(played.drill().fault()));
    try {
      return Optional.of(marker.mark(played, this::begun));
    } catch (CancellationException e) {
      return Optional.empty();
    }
  }

  private void begun(int step) {
    steps.set(step);
    if (stopped.get()) {
      throw new CancellationException();
    }
  }

  /** Ends it before the next step. */
  void stop() {
    stopped.set(true);
  }

  /** How many steps have been marked so far. */
  int steps() {
    return steps.get();
  }
}
