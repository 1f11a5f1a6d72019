package limberboard.library.check;

import limberboard.library.page.Caution;
import limberboard.library.page.Page;
import limberboard.library.problem.Report;

/** Checks caution pages: they must say what to do. */
final class CautionCheck implements PageCheck<Caution> {
  @Override
  public void check(Page<Caution> page, KnownNames names, Report report) {
    if (page.details().act().isEmpty()) {
      report.error("/do", "is empty", "say what to do about the danger");
    }
    for (int i = 0; i < page.details().lines().size(); i++) {
      names.condition(page.details().lines().get(i).fits(), "/do/" + i + "/fits", report);
    }
  }
}
