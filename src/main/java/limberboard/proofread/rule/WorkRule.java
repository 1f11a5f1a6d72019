package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.page.Page;
import limberboard.proofread.text.ReadWork;

/** A rule about work: procedures, and the checks of symptoms. */
interface WorkRule extends Rule {
  /** What it finds in a piece of work. */
  List<PageRemark> in(ReadWork job, Surroundings around);

  @Override
  default List<PageRemark> on(Page<?> page, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    around.jobs(page).forEach(job -> found.addAll(in(job, around)));
    return found;
  }
}
