package limberboard.desktop.letters;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** As much of a work as a fifth of a second holds, so that nobody waits for more. Stateless. */
final class TimedStep {
  private static final long STEP_NANOS = 200_000_000;

  private TimedStep() {}

  /** What is done with each row. */
  interface Work {
    InboxRow of(InboxRow row) throws IOException;
  }

  /** The first rows with the work done, at least one. */
  static List<InboxRow> done(List<InboxRow> from, Work work) throws IOException {
    long end = System.nanoTime() + STEP_NANOS;
    List<InboxRow> done = new ArrayList<>();
    for (int i = 0; i < from.size() && (i == 0 || System.nanoTime() < end); i++) {
      done.add(work.of(from.get(i)));
    }
    return done;
  }
}
