package limberboard.history.parts;

import java.util.ArrayList;
import java.util.List;

/** Cuts texts into lines, each with its own line end, so that joined they are the text again. */
public final class WholeLines {
  private WholeLines() {}

  /** The lines of a text; none of an empty one. */
  public static List<String> of(String text) {
    List<String> lines = new ArrayList<>();
    int from = 0;
    while (from < text.length()) {
      int end = text.indexOf('\n', from);
      int next = end < 0 ? text.length() : end + 1;
      lines.add(text.substring(from, next));
      from = next;
    }
    return lines;
  }
}
