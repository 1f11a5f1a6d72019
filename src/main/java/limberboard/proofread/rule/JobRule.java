package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.page.Page;
import limberboard.proofread.text.Job;

/** A rule about work: procedures, and the checks of symptoms. */
interface JobRule extends Rule {
  /** What it finds in a piece of work. */
  List<Finding> in(Job job, Surroundings around);

  @Override
  default List<Finding> on(Page<?> page, Surroundings around) {
    List<Finding> found = new ArrayList<>();
    around.jobs(page).forEach(job -> found.addAll(in(job, around)));
    return found;
  }
}
