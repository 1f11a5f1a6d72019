package limberboard.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.library.page.Kind;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.util.BytesRef;

/**
 * Finds and orders the pages that answer a question. Lucene proposes the best of each sort
 * (symptoms and others, fitting and not, named by title); these few are then ordered by what they
 * are, how nearly the question is their title, and whether they fit.
 */
final class Ranking {
  private static final int FEWEST_PROPOSED = 40;

  /** What a symptom gains: who describes what is wrong wants to know why. */
  private static final double SYMPTOM = 1.5;

  /** What a page gains whose name is just what was asked. */
  private static final double NAME = 4;

  /** What is left of the score of a page that does not fit the boat. */
  private static final double NOT_FITTING = 0.1;

  /** What is left of it where a fault is told of: its symptom says why it is not this boat's. */
  private static final double FAULT_NOT_FITTING = 0.25;

  private static final Fit NOTHING_ASKED = new Fit.Yes("");

  private final IndexSearcher searcher;
  private final FitKeys fitKeys;

  Ranking(IndexSearcher searcher, FitKeys fitKeys) {
    this.searcher = searcher;
    this.fitKeys = fitKeys;
  }

  /** The pages that answer, the best first, at most as many as the query wants. */
  List<RankedPage> best(Question question, SearchQuery query) throws IOException {
    List<Slot> slots = question.slots();
    if (!question.says()) {
      return best(question, query, SlotQuery.inNames(slots));
    }
    int strong = (int) slots.stream().filter(slot -> !slot.faint()).count();
    int least = SlotQuery.least(Math.max(1, strong));
    List<RankedPage> ranked = best(question, query, SlotQuery.anywhere(slots, least));
    return ranked.isEmpty() ? best(question, query, SlotQuery.anywhere(slots, 1)) : ranked;
  }

  private List<RankedPage> best(Question question, SearchQuery query, Query anywhere)
      throws IOException {
    int most =
        Math.min(
            Math.max(query.limit(), FEWEST_PROPOSED),
            Math.max(1, searcher.getIndexReader().maxDoc()));
    Query symptoms = question.says() ? SlotQuery.anywhere(question.slots(), 1) : anywhere;
    Map<Integer, Double> proposed = new HashMap<>();
    for (Query filter : filters(query)) {
      propose(both(anywhere, filter), most, proposed);
      propose(both(both(anywhere, filter), SlotQuery.inNames(question.slots())), most, proposed);
      propose(both(both(symptoms, filter), kinds(List.of(Kind.SYMPTOM))), most, proposed);
    }
    List<RankedPage> ranked = new ArrayList<>();
    for (Map.Entry<Integer, Double> entry : proposed.entrySet()) {
      ranked.add(ranked(entry.getKey(), entry.getValue(), question, query.boat()));
    }
    return ranked.stream()
        .sorted(Comparator.comparing(RankedPage::score).reversed().thenComparing(RankedPage::id))
        .limit(query.limit())
        .toList();
  }

  /** One filter for what fits the boat and one for what does not, within the kinds wanted. */
  private List<Query> filters(SearchQuery query) {
    Query ofKind = query.kinds().isEmpty() ? new MatchAllDocsQuery() : kinds(query.kinds());
    List<String> keys = query.boat().map(fitKeys::notFitting).orElse(List.of());
    if (keys.isEmpty()) {
      return List.of(ofKind);
    }
    Query notFitting = new TermInSetQuery(FitKeys.FIELD, keys.stream().map(BytesRef::new).toList());
    Query fitting =
        new BooleanQuery.Builder().add(ofKind, Occur.MUST).add(notFitting, Occur.MUST_NOT).build();
    return query.onlyFitting() ? List.of(fitting) : List.of(fitting, both(ofKind, notFitting));
  }

  private static Query kinds(Collection<Kind> kinds) {
    return new TermInSetQuery(
        PageDocuments.KIND, kinds.stream().map(kind -> new BytesRef(kind.name())).toList());
  }

  private static Query both(Query scored, Query filter) {
    return new BooleanQuery.Builder().add(scored, Occur.MUST).add(filter, Occur.FILTER).build();
  }

  private void propose(Query query, int most, Map<Integer, Double> proposed) throws IOException {
    for (ScoreDoc found : searcher.search(query, most).scoreDocs) {
      proposed.putIfAbsent(found.doc, (double) found.score);
    }
  }

  private RankedPage ranked(int document, double score, Question question, Optional<Fitting> boat)
      throws IOException {
    List<LeafReaderContext> leaves = searcher.getIndexReader().leaves();
    LeafReaderContext leaf = leaves.get(ReaderUtil.subIndex(document, leaves));
    Function<String, String> values = new Values(leaf, document)::of;
    Kind kind = Kind.valueOf(values.apply(PageDocuments.KIND));
    String title = values.apply(PageDocuments.WHOLE_TITLE);
    String key = values.apply(FitKeys.FIELD);
    Fit fit = boat.map(fitting -> fitKeys.judge(key, fitting)).orElse(NOTHING_ASKED);
    boolean symptom = kind == Kind.SYMPTOM;
    String names = values.apply(PageNames.FIELD);
    double nearly =
        question.tellsOfFault() && !symptom
            ? PageNames.nearnessOfFault(names, question.slots())
            : PageNames.nearness(names, question.slots());
    double notFitting = question.tellsOfFault() && symptom ? FAULT_NOT_FITTING : NOT_FITTING;
    double total =
        score
            * (symptom ? SYMPTOM : 1)
            * (1 + NAME * nearly * nearly * nearly)
            * (fit.fits() ? 1 : notFitting);
    return new RankedPage(document, values.apply(PageDocuments.ID), kind, title, fit, total);
  }

  private record Values(LeafReaderContext leaf, int document) {
    String of(String field) {
      try {
        BinaryDocValues values = DocValues.getBinary(leaf.reader(), field);
        return values.advanceExact(document - leaf.docBase)
            ? values.binaryValue().utf8ToString()
            : "";
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }
  }
}
