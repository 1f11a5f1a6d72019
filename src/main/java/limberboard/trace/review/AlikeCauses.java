package limberboard.trace.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.effort.AnswerModel;
import limberboard.library.page.Cause;
import limberboard.trace.Fault;

/**
 * Finds causes that no strategy can tell apart: on every boat that can have both, every check gives
 * each of its answers with the same likelihood under both. Where they share the mend it does not
 * matter which of them it is.
 *
 * @param review the page
 */
record AlikeCauses(PageReview review) {
  private static final double SAME = 1e-9;

  List<Remark> remarks() {
    List<Cause> causes = review.page().details().causes();
    return review.ofCauses(
        (pointer, cause) -> {
          int next = causes.indexOf(cause) + 1;
          List<Cause> alike =
              causes.subList(next, causes.size()).stream()
                  .filter(other -> !other.id().equals(cause.id()))
                  .filter(other -> !other.mend().equals(cause.mend()))
                  .filter(other -> neverToldApart(cause.id(), other.id()))
                  .toList();
          return alike.isEmpty() ? Optional.empty() : Optional.of(remark(pointer, cause, alike));
        });
  }

  private static Remark remark(String pointer, Cause cause, List<Cause> alike) {
    return new Remark(
        pointer,
        "no check tells \""
            + cause.id()
            + "\" from "
            + alike.stream()
                .map(other -> "\"" + other.id() + "\"")
                .collect(Collectors.joining(" or "))
            + " on any boat of this workspace that can have both, and their mends differ",
        "write a check that finds one of them and not the other, or give them the same mend");
  }

  private boolean neverToldApart(String one, String other) {
    List<Fault> both =
        review.withCause(one).stream().filter(fault -> fault.hasCause(other)).toList();
    return !both.isEmpty() && both.stream().noneMatch(fault -> toldApart(fault, one, other));
  }

  private static boolean toldApart(Fault fault, String one, String other) {
    AnswerModel answers = fault.model().answers();
    int first = fault.causeNumber(one);
    int second = fault.causeNumber(other);
    for (int check = 0; check < answers.checks(); check++) {
      for (int answer = 0; answer < answers.answers(check); answer++) {
        double apart =
            answers.likelihood(check, answer, first) - answers.likelihood(check, answer, second);
        if (Math.abs(apart) > SAME) {
          return true;
        }
      }
    }
    return false;
  }
}
