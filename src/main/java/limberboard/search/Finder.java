package limberboard.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.search.IndexSearcher;

/** Answers queries from one state of the index. Safe for use by several threads. */
final class Finder {
  private static final Set<String> SHOWN = Set.of(PageDocuments.TEXT);

  private final IndexSearcher searcher;
  private final Analysis analysis;
  private final QuestionReader questions;
  private final Ranking ranking;

  Finder(
      DirectoryReader reader,
      Analysis analysis,
      SpellingTable spellings,
      StopWords stopWords,
      FitKeys fitKeys) {
    this.searcher = new IndexSearcher(reader);
    this.searcher.setSimilarity(new FieldSimilarity());
    this.analysis = analysis;
    this.questions = new QuestionReader(analysis, spellings, stopWords, new Vocabulary(reader));
    this.ranking = new Ranking(searcher, fitKeys);
  }

  /** Answers a query. */
  SearchResults find(SearchQuery query) throws IOException {
    Question question = questions.read(query.text(), query.typing());
    if (question.slots().isEmpty()) {
      return new SearchResults(List.of(), question.didYouMean());
    }
    Excerpts passages = new Excerpts(analysis, question.slots());
    List<Hit> hits = new ArrayList<>();
    for (RankedPage ranked : ranking.best(question, query)) {
      String text =
          searcher.storedFields().document(ranked.document(), SHOWN).get(PageDocuments.TEXT);
      Excerpt passage = text == null ? Excerpt.EMPTY : passages.best(text);
      hits.add(
          new Hit(
              ranked.id(), ranked.kind(), ranked.title(), ranked.score(), passage, ranked.fit()));
    }
    return new SearchResults(hits, question.didYouMean());
  }
}
