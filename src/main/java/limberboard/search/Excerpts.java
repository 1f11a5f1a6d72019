package limberboard.search;

import java.io.IOException;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.uhighlight.PassageFormatter;
import org.apache.lucene.search.uhighlight.PassageScorer;
import org.apache.lucene.search.uhighlight.SplittingBreakIterator;
import org.apache.lucene.search.uhighlight.UnifiedHighlighter;
import org.apache.lucene.util.BytesRef;

/** Finds the sentence of a page that answers a question best, and marks the words asked for. */
final class Excerpts {
  private static final int MOST_CHARACTERS_READ = 200_000;

  private final Query query;
  private final UnifiedHighlighter highlighter;

  /** Passages for one question. */
  Excerpts(Analysis analysis, List<Slot> slots) {
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    Set<String> terms = new HashSet<>();
    slots.forEach(slot -> terms.addAll(slot.terms().keySet()));
    terms.forEach(term -> any.add(new TermQuery(new Term(PageDocuments.TEXT, term)), Occur.SHOULD));
    query = any.build();
    highlighter =
        UnifiedHighlighter.builderWithoutSearcher(analysis.stems())
            .withMaxLength(MOST_CHARACTERS_READ)
            .withBreakIterator(Excerpts::sentences)
            .withHandleMultiTermQuery(false)
            .withHighlightPhrasesStrictly(false)
            .withPassageRelevancyOverSpeed(true)
            .withWeightMatches(false)
            .withScorer(new BySlots(slots))
            .withFormatter(new AsRecord())
            .build();
  }

  /** The best passage of a text, one piece a line; its beginning when nothing is found in it. */
  Excerpt best(String text) throws IOException {
    if (text.isEmpty()) {
      return Excerpt.EMPTY;
    }
    Object found = highlighter.highlightWithoutSearcher(PageDocuments.TEXT, query, text, 1);
    return found instanceof Excerpt passage ? passage : Excerpt.EMPTY;
  }

  private static BreakIterator sentences() {
    return new SplittingBreakIterator(BreakIterator.getSentenceInstance(Locale.UK), '\n');
  }

  /** Scores by what of the question is in the passage; whole sentences win over snippets. */
  private static final class BySlots extends PassageScorer {
    private static final int A_SENTENCE = 60;
    private static final float SNIPPET = 0.6f;

    private final List<Slot> slots;

    BySlots(List<Slot> slots) {
      this.slots = slots;
    }

    @Override
    public float score(org.apache.lucene.search.uhighlight.Passage passage, int contentLength) {
      Set<String> found = new HashSet<>();
      for (int i = 0; i < passage.getNumMatches(); i++) {
        BytesRef term = passage.getMatchTerms()[i];
        found.add(term.utf8ToString());
      }
      double score = 0;
      for (Slot slot : slots) {
        if (slot.terms().keySet().stream().anyMatch(found::contains)) {
          score += slot.weight();
        }
      }
      float whole = Math.min(1, (float) passage.getLength() / A_SENTENCE);
      return (float) score * (SNIPPET + (1 - SNIPPET) * whole);
    }
  }

  private static final class AsRecord extends PassageFormatter {
    @Override
    public Object format(org.apache.lucene.search.uhighlight.Passage[] passages, String content) {
      if (passages.length == 0) {
        return Excerpt.EMPTY;
      }
      org.apache.lucene.search.uhighlight.Passage best = passages[0];
      List<MarkedSpan> marks = new ArrayList<>();
      for (int i = 0; i < best.getNumMatches(); i++) {
        marks.add(new MarkedSpan(best.getMatchStarts()[i], best.getMatchEnds()[i]));
      }
      return new ExcerptCut(content, best.getStartOffset(), best.getEndOffset()).passage(marks);
    }
  }
}
