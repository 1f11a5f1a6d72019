package limberboard.desktop.parts;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What has been typed into one text component, so that it can be undone and done again. */
final class TypingSteps {
  private static final int MOST = 200;
  private final Deque<Typed> back = new ArrayDeque<>();
  private final Deque<Typed> forward = new ArrayDeque<>();
  private Typed now;
  private int joinsAt = -1;

  /**
   * A text with the caret in it.
   *
   * @param text the text
   * @param caret the caret's place in it
   */
  record Typed(String text, int caret) {}

  TypingSteps(String text) {
    now = new Typed(text, text.length());
  }

  /** The text is another one now, which nobody typed: there is nothing to be undone. */
  void replaced(String text) {
    back.clear();
    forward.clear();
    joinsAt = -1;
    now = new Typed(text, text.length());
  }

  /**
   * The text has been changed by typing, cutting or pasting.
   *
   * @param text the text as it is now
   * @param goesOn whether this is the other half of the change before, as when a letter takes the
   *     place of what was selected
   */
  void typed(String text, boolean goesOn) {
    TextChange change = TextChange.between(now.text(), text);
    boolean letter =
        change.removed() == 0
            && change.inserted().length() == 1
            && !Character.isWhitespace(change.inserted().charAt(0));
    if (!(goesOn && !back.isEmpty()) && !(letter && change.at() == joinsAt)) {
      back.addLast(now);
      if (back.size() > MOST) {
        back.removeFirst();
      }
    }
    forward.clear();
    int end = change.at() + change.inserted().length();
    joinsAt = change.inserted().isEmpty() ? -1 : end;
    now = new Typed(text, end);
  }

  boolean canUndo() {
    return !back.isEmpty();
  }

  boolean canRedo() {
    return !forward.isEmpty();
  }

  /** The text before the last step: a word typed, or one cut, paste or deletion. */
  Optional<Typed> undo() {
    return move(back, forward);
  }

  /** The text after the step that was undone last. */
  Optional<Typed> redo() {
    return move(forward, back);
  }

  private Optional<Typed> move(Deque<Typed> from, Deque<Typed> to) {
    joinsAt = -1;
    Optional<Typed> next = Optional.ofNullable(from.pollLast());
    next.ifPresent(
        typed -> {
          to.addLast(now);
          now = typed;
        });
    return next;
  }
}
