package limberboard.proofread.rule;

import java.util.List;
import limberboard.library.page.Page;

/** A kind of fault that a machine can find. Implementations are immutable. */
public interface Rule {
  /** Its name, by which findings and answers name it: plain words with hyphens. */
  String name();

  /** What it finds on a page, in the page's order. */
  List<PageRemark> on(Page<?> page, Surroundings around);
}
