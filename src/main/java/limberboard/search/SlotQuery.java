package limberboard.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SynonymQuery;

/** Makes Lucene queries of slots: each slot counts where it is found best. */
final class SlotQuery {
  /** How much a slot gains from being found in further fields. */
  private static final float TIE = 0.2f;

  private static final int SHORT_QUESTION = 3;
  private static final double LEAST_SHARE = 0.25;

  private SlotQuery() {}

  /** How many of the slots that are not faint a page must have. */
  static int least(int slots) {
    return slots < SHORT_QUESTION ? 1 : Math.max(2, (int) (slots * LEAST_SHARE));
  }

  /** Pages that have at least so many of the slots; faint ones only add. */
  static Query anywhere(List<Slot> slots, int least) {
    boolean onlyFaint = slots.stream().allMatch(Slot::faint);
    BooleanQuery.Builder strong = new BooleanQuery.Builder();
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    for (Slot slot : slots) {
      (slot.faint() && !onlyFaint ? all : strong).add(anywhere(slot), Occur.SHOULD);
    }
    strong.setMinimumNumberShouldMatch(least);
    return all.add(strong.build(), Occur.MUST).build();
  }

  /** Pages that have all the slots in their title, or all in the phrases people use for them. */
  static Query inNames(List<Slot> slots) {
    return new DisjunctionMaxQuery(
        List.of(allIn(slots, IndexField.TITLE), allIn(slots, IndexField.SAID)), 0);
  }

  private static Query allIn(List<Slot> slots, IndexField field) {
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    slots.forEach(slot -> all.add(in(slot, field), Occur.MUST));
    return all.build();
  }

  private static Query anywhere(Slot slot) {
    List<Query> fields = new ArrayList<>();
    for (IndexField field : IndexField.values()) {
      fields.add(new BoostQuery(in(slot, field), field.boost()));
    }
    return new BoostQuery(new DisjunctionMaxQuery(fields, TIE), (float) slot.weight());
  }

  private static Query in(Slot slot, IndexField field) {
    SynonymQuery.Builder terms = new SynonymQuery.Builder(field.key());
    for (Map.Entry<String, Float> term : slot.terms().entrySet()) {
      terms.addTerm(new Term(field.key(), term.getKey()), term.getValue());
    }
    return terms.build();
  }
}
