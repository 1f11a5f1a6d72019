package limberboard.desktop.boats;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The form as it was saved, as it is, and the steps between, which can be undone. Letters typed one
 * after another into one field are one step. For the event thread only.
 */
final class DraftSteps {
  private static final int MOST = 200;
  private final Deque<Draft> before = new ArrayDeque<>();
  private Optional<Field> lastTyped = Optional.empty();
  private Draft saved = Draft.blank();
  private Draft now = Draft.blank();

  Draft now() {
    return now;
  }

  boolean isChanged() {
    return !now.equals(saved);
  }

  /** Begins with another form. */
  void open(Draft draft) {
    now = draft;
    saved(draft);
  }

  /** Notes what has been saved; there is nothing to undo any more. */
  void saved(Draft draft) {
    saved = draft;
    before.clear();
    lastTyped = Optional.empty();
  }

  /** Goes back to what was saved. */
  void drop() {
    open(saved);
  }

  /** Takes a step: a field that was typed into, or another choice. */
  void step(Draft next, Optional<Field> typed) {
    boolean goesOn = typed.isPresent() && lastTyped.equals(typed);
    if (!goesOn) {
      before.push(now);
      if (before.size() > MOST) {
        before.removeLast();
      }
    }
    now = next;
    lastTyped = typed;
  }

  boolean canUndo() {
    return !before.isEmpty();
  }

  void undo() {
    now = before.pop();
    lastTyped = Optional.empty();
  }
}
