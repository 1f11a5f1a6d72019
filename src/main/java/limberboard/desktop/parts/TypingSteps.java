package limberboard.desktop.parts;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What has been typed into one text component, so that it can be undone and done again. */
final class TypingSteps {
  private static final int LEAST = 200;
  private static final int MOST = 4_000;
  private static final long MOST_LETTERS = 16_000_000;
  private final Deque<Typed> back = new ArrayDeque<>();
  private final Deque<Typed> forward = new ArrayDeque<>();
  private Typed now;
  private int joinsAt = -1;
  private long letters;

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
    letters = 0;
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
      letters += now.text().length();
      while (back.size() > MOST || back.size() > LEAST && letters > MOST_LETTERS) {
        letters -= back.removeFirst().text().length();
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
    Optional<Typed> before = move(back, forward);
    before.ifPresent(typed -> letters -= typed.text().length());
    return before;
  }

  /** The text after the step that was undone last. */
  Optional<Typed> redo() {
    int after = now.text().length();
    Optional<Typed> next = move(forward, back);
    next.ifPresent(typed -> letters += after);
    return next;
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
