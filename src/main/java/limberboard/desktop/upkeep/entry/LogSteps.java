package limberboard.desktop.upkeep.entry;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import limberboard.boat.LogChange;

/**
 * The changes of one boat's log since the window was opened, in their order, with those that were
 * taken back. For the event thread only.
 */
final class LogSteps {
  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();

  /**
   * A change.
   *
   * @param change what takes it back
   * @param what it was, to follow “Undo”: {@code writing “Lay up the boat”}
   */
  record Step(LogChange change, String what) {}

  /** Takes a new change; what was taken back before can then not be made again. */
  void did(Step step) {
    done.push(step);
    undone.clear();
  }

  /** The change that is taken back next. */
  Optional<Step> toUndo() {
    return Optional.ofNullable(done.peek());
  }

  /** The change that is made again next. */
  Optional<Step> toRedo() {
    return Optional.ofNullable(undone.peek());
  }

  /**
   * The last change was taken back.
   *
   * @param back what makes it again
   */
  void undid(LogChange back) {
    undone.push(new Step(back, done.pop().what()));
  }

  /**
   * The change taken back last was made again.
   *
   * @param again what takes it back
   */
  void redid(LogChange again) {
    done.push(new Step(again, undone.pop().what()));
  }

  /** Gives up a change that can no longer be taken back or made again. */
  void forget(Step step) {
    done.remove(step);
    undone.remove(step);
  }
}
