package limberboard.library.page;

import java.util.List;
import java.util.Map;

/** What a page's kind adds to its header. */
public sealed interface Details
    permits Symptom, Procedure, Material, Model, Caution, Topic, Wording, Course {
  /** The kind of page these details belong to. */
  Kind kind();

  /** The sums shown on the page; none for kinds that have no such key. */
  default List<SumUse> workings() {
    return List.of();
  }

  /** The figures that other pages may quote, by name; none for kinds that have no such key. */
  default Map<String, PageFigure> figures() {
    return Map.of();
  }
}
