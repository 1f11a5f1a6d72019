package limberboard.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a text to be shown, cut to a length that can be read at a glance.
 *
 * @param text the whole text
 * @param start where the stretch begins
 * @param end where it ends
 */
record ExcerptCut(String text, int start, int end) {
  private static final int LONGEST = 240;
  private static final int BEFORE_FIRST_MARK = 60;
  private static final String CUT = "…";

  /** The passage with its marks, which are given in the whole text's offsets. */
  Excerpt passage(List<MarkedSpan> marks) {
    int from = start;
    int to = end;
    while (from < to && Character.isWhitespace(text.charAt(from))) {
      from++;
    }
    while (to > from && Character.isWhitespace(text.charAt(to - 1))) {
      to--;
    }
    String before = "";
    String after = "";
    if (to - from > LONGEST) {
      int firstMark = marks.stream().mapToInt(MarkedSpan::start).min().orElse(from);
      if (firstMark > from + BEFORE_FIRST_MARK) {
        from = afterBreak(firstMark - BEFORE_FIRST_MARK, firstMark);
        before = CUT;
      }
      if (to - from > LONGEST) {
        to = beforeBreak(from + LONGEST, Math.max(from, firstMark));
        after = CUT;
      }
    }
    return new Excerpt(
        before + text.substring(from, to) + after, shifted(marks, from, to, before.length()));
  }

  /** The first beginning of a word from here on, short of the limit. */
  private int afterBreak(int at, int limit) {
    for (int i = at; i < limit; i++) {
      if (Character.isWhitespace(text.charAt(i))) {
        return i + 1;
      }
    }
    return Character.isLowSurrogate(text.charAt(at)) ? at + 1 : at;
  }

  /** The last end of a word up to here, beyond the limit. */
  private int beforeBreak(int at, int limit) {
    for (int i = at; i > limit + 1; i--) {
      if (Character.isWhitespace(text.charAt(i))) {
        return i;
      }
    }
    return Character.isLowSurrogate(text.charAt(at)) ? at - 1 : at;
  }

  /** The marks that lie within the cut, in its offsets, those that touch or overlap made one. */
  private static List<MarkedSpan> shifted(List<MarkedSpan> marks, int from, int to, int before) {
    List<MarkedSpan> within = new ArrayList<>();
    marks.stream()
        .filter(mark -> mark.start() >= from && mark.start() < to)
        .map(mark -> new MarkedSpan(mark.start(), Math.min(mark.end(), to)))
        .sorted(Comparator.comparing(MarkedSpan::start).thenComparing(MarkedSpan::end))
        .map(mark -> new MarkedSpan(mark.start() - from + before, mark.end() - from + before))
        .forEach(
            mark -> {
              MarkedSpan last = within.isEmpty() ? null : within.get(within.size() - 1);
              if (last != null && mark.start() <= last.end()) {
                within.set(
                    within.size() - 1,
                    new MarkedSpan(last.start(), Math.max(last.end(), mark.end())));
              } else {
                within.add(mark);
              }
            });
    return within;
  }
}
