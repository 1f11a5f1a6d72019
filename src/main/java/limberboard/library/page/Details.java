package limberboard.library.page;

import java.util.List;

/** What a page's kind adds to its header. */
public sealed interface Details
    permits Symptom, Procedure, Material, Model, Caution, Topic, Wording, Course {
  /** The kind of page these details belong to. */
  Kind kind();

  /** The sums shown on the page; none for kinds that have no such key. */
  default List<SumUse> workings() {
    return List.of();
  }
}
