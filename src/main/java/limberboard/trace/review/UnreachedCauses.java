package limberboard.trace.review;

import java.util.List;
import java.util.Optional;

/**
 * Finds causes that no plan ends at: neither is their mend proposed, nor are they named to the
 * yard. Causes that no boat of the workspace can have are none of them.
 *
 * @param review the page
 * @param uses what the plan for each of the review's faults uses, in their order
 */
record UnreachedCauses(PageReview review, List<PlanUse> uses) {

  List<Remark> remarks() {
    return review.ofCauses(
        (pointer, cause) -> {
          boolean possible = false;
          for (int i = 0; i < uses.size(); i++) {
            if (review.faults().get(i).hasCause(cause.id())) {
              if (uses.get(i).mends().contains(cause.mend())) {
                return Optional.empty();
              }
              possible = true;
            }
          }
          return possible ? Optional.of(remark(pointer, cause.id())) : Optional.empty();
        });
  }

  private static Remark remark(String pointer, String cause) {
    return new Remark(
        pointer,
        "the plan never ends at \""
            + cause
            + "\" on any boat of this workspace that can have it: at no point reached at least once"
            + " in a thousand times is its mend proposed or the cause named to the yard",
        "write a quick check that finds it and little else, or look again at its weight");
  }
}
