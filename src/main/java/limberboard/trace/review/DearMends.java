package limberboard.trace.review;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.effort.EffortModel;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.trace.Fault;
import limberboard.words.Minutes;

/**
 * Finds mends that are marked for an owner and cost more minutes, access included, than the yard
 * does, on every boat that can have the cause: no plan ever proposes them.
 *
 * @param review the page
 */
record DearMends(PageReview review) {

  List<Remark> remarks() {
    return review.ofCauses(
        (pointer, cause) -> {
          List<Mend> mends =
              review.withCause(cause.id()).stream()
                  .map(fault -> mend(fault, fault.causeNumber(cause.id())))
                  .toList();
          return mends.stream().allMatch(Mend::isDear)
              ? mends.stream()
                  .min(Comparator.comparingDouble(Mend::excess))
                  .map(cheapest -> remark(pointer + "/mend", cause.mend(), cheapest))
              : Optional.empty();
        });
  }

  private static Mend mend(Fault fault, int cause) {
    EffortModel model = fault.model();
    MendEffort effort = model.mends().get(cause);
    double minutes = effort.minutes() + model.accessMinutes(effort.access(), new BitSet());
    return new Mend(fault, effort.byOwner(), minutes);
  }

  private static Remark remark(String pointer, String mend, Mend cheapest) {
    return new Remark(
        pointer,
        "an owner may do \""
            + mend
            + "\", but on every boat of this workspace that can have the cause it takes longer than"
            + " the yard costs: on "
            + cheapest.fault().fitting().boat().name()
            + " "
            + Minutes.words(cheapest.minutes())
            + " with access, against "
            + Minutes.words(cheapest.fault().yardMinutes()),
        "look at its minutes and access; if they are right, the plan hands the cause to the yard");
  }

  /** A mend on one boat; its minutes include access. */
  private record Mend(Fault fault, boolean byOwner, double minutes) {
    boolean isDear() {
      return byOwner && excess() > 0;
    }

    double excess() {
      return minutes - fault.yardMinutes();
    }
  }
}
