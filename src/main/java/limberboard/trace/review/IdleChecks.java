package limberboard.trace.review;

import java.util.List;
import java.util.Optional;

/**
 * Finds checks that no plan asks for. One that safety demands is never idle.
 *
 * @param review the page
 * @param uses what the plan for each of the review's faults uses
 */
record IdleChecks(PageReview review, List<PlanUse> uses) {

  List<Remark> remarks() {
    return review.ofChecks(
        (pointer, check) -> {
          boolean idle =
              !check.comesFirst()
                  && !review.withCheck(check.id()).isEmpty()
                  && uses.stream().noneMatch(use -> use.checks().contains(check.id()));
          return idle ? Optional.of(remark(pointer, check.id())) : Optional.empty();
        });
  }

  private static Remark remark(String pointer, String check) {
    return new Remark(
        pointer,
        "the plan never asks for \""
            + check
            + "\" on any boat of this workspace, at any point reached at least once in a thousand"
            + " times",
        "make it quicker or more telling, or keep it for those who answer it unasked");
  }
}
