package limberboard.search;

import java.util.Optional;
import java.util.TreeMap;

/** Collects what in a text was misspelt, and writes the text put right. */
final class Correction {
  private static final int LONGEST_TEXT = 200;

  private final String text;
  private final TreeMap<Integer, Change> changes = new TreeMap<>();

  private record Change(int end, String right) {}

  Correction(String text) {
    this.text = text;
  }

  /** Puts a stretch of the text right; the last word on it counts. */
  void replace(int start, int end, String right) {
    boolean same = text.substring(start, end).equalsIgnoreCase(right);
    if (!same) {
      changes.put(start, new Change(end, right));
    }
  }

  /** The text put right; empty when nothing was wrong, or when it is too long to show as a line. */
  Optional<String> text() {
    if (changes.isEmpty() || text.length() > LONGEST_TEXT) {
      return Optional.empty();
    }
    StringBuilder right = new StringBuilder();
    int at = 0;
    for (var change : changes.entrySet()) {
      if (change.getKey() >= at) {
        right.append(text, at, change.getKey()).append(change.getValue().right());
        at = change.getValue().end();
      }
    }
    return Optional.of(right.append(text.substring(at)).toString().strip());
  }
}
