package limberboard.search;

import java.util.List;

/**
 * A short piece of a page, with the words that were looked for marked.
 *
 * @param text plain text, may be empty
 * @param marks where those words stand in the text, in order, not overlapping
 */
public record Excerpt(String text, List<MarkedSpan> marks) {
  /** No text. */
  public static final Excerpt EMPTY = new Excerpt("", List.of());

  /**
   * Copies the marks.
   *
   * @throws IllegalArgumentException when a mark reaches beyond the text or into another one
   */
  public Excerpt {
    marks = List.copyOf(marks);
    int end = 0;
    for (MarkedSpan mark : marks) {
      if (mark.start() < end || mark.end() > text.length()) {
        throw new IllegalArgumentException("a mark lies outside the text or over another: " + mark);
      }
      end = mark.end();
    }
  }
}
