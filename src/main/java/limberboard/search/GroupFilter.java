package limberboard.search;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionLengthAttribute;

/** Puts the marks of {@link WordGroups} beside the stems of a text, at the same position. */
final class GroupFilter extends TokenFilter {
  private final WordGroups groups;
  private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
  private final OffsetAttribute offset = addAttribute(OffsetAttribute.class);
  private final PositionIncrementAttribute step = addAttribute(PositionIncrementAttribute.class);
  private final PositionLengthAttribute width = addAttribute(PositionLengthAttribute.class);
  private final List<Ahead> ahead = new ArrayList<>();
  private final Deque<MarkHere> marks = new ArrayDeque<>();
  private boolean inputEnded;

  private record Ahead(String stem, int start, int end, State state) {}

  private record MarkHere(String mark, int length, int start, int end) {}

  GroupFilter(TokenStream input, WordGroups groups) {
    super(input);
    this.groups = groups;
  }

  @Override
  public boolean incrementToken() throws IOException {
    if (!marks.isEmpty()) {
      emit(marks.poll());
      return true;
    }
    lookAhead();
    if (ahead.isEmpty()) {
      return false;
    }
    List<String> stems = ahead.stream().map(Ahead::stem).toList();
    Ahead first = ahead.get(0);
    for (WordGroups.Match match : groups.at(stems, 0)) {
      int end = ahead.get(match.length() - 1).end();
      marks.add(new MarkHere(match.mark(), match.length(), first.start(), end));
    }
    restoreState(ahead.remove(0).state());
    return true;
  }

  private void lookAhead() throws IOException {
    while (!inputEnded && ahead.size() < groups.longest()) {
      if (input.incrementToken()) {
        ahead.add(
            new Ahead(term.toString(), offset.startOffset(), offset.endOffset(), captureState()));
      } else {
        inputEnded = true;
      }
    }
  }

  private void emit(MarkHere here) {
    clearAttributes();
    term.setEmpty().append(here.mark());
    offset.setOffset(here.start(), here.end());
    step.setPositionIncrement(0);
    width.setPositionLength(here.length());
  }

  @Override
  public void reset() throws IOException {
    super.reset();
    ahead.clear();
    marks.clear();
    inputEnded = false;
  }
}
