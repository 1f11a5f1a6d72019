package limberboard.library.header;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;

/** Gathers the ids of the pages that a page's header refers to. */
public final class HeaderLinks {
  private HeaderLinks() {}

  public static List<String> of(Page<?> page) {
    List<String> ids = new ArrayList<>(page.head().fits().model());
    if (page.details() instanceof Symptom symptom) {
      ids.addAll(CautionUse.ids(symptom.first()));
      symptom.causes().forEach(cause -> ids.add(cause.mend()));
      symptom
          .checks()
          .forEach(
              check -> {
                ids.addAll(CautionUse.ids(check.cautions()));
                check.tools().forEach(tool -> ids.add(tool.use()));
              });
    } else if (page.details() instanceof Procedure procedure) {
      procedure.tools().forEach(tool -> ids.add(tool.use()));
      procedure.materials().forEach(material -> ids.add(material.use()));
      ids.addAll(CautionUse.ids(procedure.cautions()));
      ids.addAll(procedure.resets());
      ids.addAll(procedure.before());
      procedure.round().forEach(each -> ids.add(each.work()));
      procedure.lookAgain().flatMap(Procedure.LookAgain::with).ifPresent(ids::add);
    } else if (page.details() instanceof Material material) {
      ids.addAll(material.instead());
      ids.addAll(CautionUse.ids(material.cautions()));
    } else if (page.details() instanceof Model model) {
      model.ropes().forEach(rope -> rope.material().ifPresent(ids::add));
    }
    return ids;
  }
}
