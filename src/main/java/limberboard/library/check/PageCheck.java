package limberboard.library.check;

import limberboard.library.page.Details;
import limberboard.library.page.Page;
import limberboard.library.problem.Report;

/** Checks pages of one kind against the rest of the library. */
interface PageCheck<D extends Details> {
  /** Reports what is wrong with the page's details. */
  void check(Page<D> page, KnownNames names, Report report);
}
