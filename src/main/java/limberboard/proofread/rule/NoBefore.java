package limberboard.proofread.rule;

import java.util.List;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Work;
import limberboard.proofread.text.TextPieces;

/** A renewal without a section <i>Before</i>: what is measured, ordered and booked beforehand. */
final class NoBefore implements Rule {
  @Override
  public String name() {
    return "no-before";
  }

  @Override
  public List<PageRemark> on(Page<?> page, Surroundings around) {
    boolean renewal =
        page.as(Procedure.class).filter(work -> work.details().work() == Work.RENEW).isPresent();
    boolean before = TextPieces.headings(page).stream().anyMatch(text -> text.startsWith("Before"));
    return renewal && !before
        ? List.of(
            PageRemark.at(
                this,
                Gravity.MISLEADS,
                page,
                around.line(page, "/work"),
                "before",
                "is a renewal, and has no section “Before”",
                "say under “Before” what is measured, ordered and booked beforehand"))
        : List.of();
  }
}
