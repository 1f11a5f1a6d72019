package limberboard.desktop.trace;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What can be undone and done again in one trace. For the event thread only. */
final class Undo {
  private static final int MOST = 200;
  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();

  /**
   * Something that was done.
   *
   * @param what in words, to follow "Undo": "the answer"
   * @param other how the trace stood before it, or after it when it has been undone
   */
  record Step(String what, BoatTrace other) {}

  /** Something has been done; what was undone before can no longer be done again. */
  void done(String what, BoatTrace before) {
    done.push(new Step(what, before));
    if (done.size() > MOST) {
      done.removeLast();
    }
    undone.clear();
  }

  /** What would be undone. */
  Optional<String> what() {
    return Optional.ofNullable(done.peek()).map(Step::what);
  }

  /** What would be done again. */
  Optional<String> whatAgain() {
    return Optional.ofNullable(undone.peek()).map(Step::what);
  }

  /** Goes back a step from where the trace stands. */
  Optional<BoatTrace> back(BoatTrace now) {
    return move(done, undone, now);
  }

  /** Does again what was undone last. */
  Optional<BoatTrace> forward(BoatTrace now) {
    return move(undone, done, now);
  }

  private static Optional<BoatTrace> move(Deque<Step> from, Deque<Step> to, BoatTrace now) {
    if (from.isEmpty()) {
      return Optional.empty();
    }
    Step step = from.pop();
    to.push(new Step(step.what(), now));
    return Optional.of(step.other());
  }
}
