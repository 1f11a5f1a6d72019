package limberboard.search;

import java.util.HashMap;
import java.util.Map;
import org.apache.lucene.search.similarities.BM25Similarity;
import org.apache.lucene.search.similarities.PerFieldSimilarityWrapper;
import org.apache.lucene.search.similarities.Similarity;

/**
 * BM25 (Robertson and Zaragoza, <i>The Probabilistic Relevance Framework: BM25 and Beyond</i>,
 * 2009) for each field, without its inverse document frequency: how rare a word is, is judged once
 * for all fields and is part of the slot's weight, because in a short field it is a matter of luck.
 */
final class FieldSimilarity extends PerFieldSimilarityWrapper {
  private static final float SATURATION = 1.0f;

  private final Map<String, Similarity> byField = new HashMap<>();
  private final Similarity other = new WithoutRarity(SATURATION, 0);

  FieldSimilarity() {
    for (IndexField field : IndexField.values()) {
      byField.put(field.key(), new WithoutRarity(SATURATION, field.lengthMatters()));
    }
  }

  @Override
  public Similarity get(String name) {
    return byField.getOrDefault(name, other);
  }

  private static final class WithoutRarity extends BM25Similarity {
    WithoutRarity(float k1, float b) {
      super(k1, b);
    }

    @Override
    protected float idf(long docFreq, long docCount) {
      return 1;
    }
  }
}
