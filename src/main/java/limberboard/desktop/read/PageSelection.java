package limberboard.desktop.read;

import limberboard.desktop.read.LaidOutText.Part;

/** What of a page is selected, from where one began to where one is. For the event thread only. */
final class PageSelection {
  private final Runnable changed;
  private LaidOutText text = LaidOutText.EMPTY;
  private int anchor;
  private int caret;

  /** Nothing, in no text. */
  PageSelection(Runnable changed) {
    this.changed = changed;
  }

  /** Goes on in another text; what was selected stays so if it stands at the same place there. */
  void in(LaidOutText other) {
    Part part = part();
    boolean same =
        part.end() <= other.length()
            && text.text()
                .substring(part.start(), part.end())
                .equals(other.text().substring(part.start(), part.end()));
    text = other;
    if (!same) {
      set(0, 0);
    }
  }

  /** What is selected; it may be empty. */
  Part part() {
    return new Part(Math.min(anchor, caret), Math.max(anchor, caret));
  }

  boolean isEmpty() {
    return anchor == caret;
  }

  /** Where one is. */
  int caret() {
    return caret;
  }

  /** Selects nothing, and begins here. */
  void from(int offset) {
    set(offset, offset);
  }

  /** Goes on to here. */
  void to(int offset) {
    set(anchor, offset);
  }

  /** Selects a part. */
  void select(Part part) {
    set(part.start(), part.end());
  }

  /** Selects everything. */
  void all() {
    set(0, text.length());
  }

  private void set(int from, int to) {
    anchor = Math.max(0, Math.min(text.length(), from));
    caret = Math.max(0, Math.min(text.length(), to));
    changed.run();
  }
}
