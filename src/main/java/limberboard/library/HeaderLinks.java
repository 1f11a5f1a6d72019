package limberboard.library;

import java.util.ArrayList;
import java.util.List;

/** Gathers the ids of the pages that a page's header refers to. */
final class HeaderLinks {
  private HeaderLinks() {}

  static List<String> of(Page<?> page) {
    List<String> ids = new ArrayList<>(page.head().fits().model());
    if (page.details() instanceof Symptom symptom) {
      ids.addAll(symptom.first());
      symptom.causes().forEach(cause -> ids.add(cause.mend()));
      symptom
          .checks()
          .forEach(
              check -> {
                ids.addAll(check.cautions());
                check.tools().forEach(tool -> ids.add(tool.use()));
              });
    } else if (page.details() instanceof Procedure procedure) {
      procedure.tools().forEach(tool -> ids.add(tool.use()));
      procedure.materials().forEach(material -> ids.add(material.use()));
      ids.addAll(procedure.cautions());
      ids.addAll(procedure.resets());
      ids.addAll(procedure.before());
      procedure.lookAgain().flatMap(Procedure.LookAgain::with).ifPresent(ids::add);
    } else if (page.details() instanceof Material material) {
      ids.addAll(material.instead());
      ids.addAll(material.cautions());
    } else if (page.details() instanceof Model model) {
      model.ropes().forEach(rope -> rope.material().ifPresent(ids::add));
    }
    return ids;
  }
}
