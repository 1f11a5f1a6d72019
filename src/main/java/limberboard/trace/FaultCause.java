package limberboard.trace;

import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Symptom;
import limberboard.library.value.Seen;
import limberboard.library.value.Skill;

/**
 * One thing that can be behind a symptom on one boat, with what its mend takes there.
 *
 * @param id the cause's id, or {@code something-else}
 * @param title short, in plain words
 * @param about how it comes about and what proves it, or empty
 * @param prior chance before any answer, 0 to 1
 * @param from where that figure comes from: "workshop's estimate"
 * @param mend procedure id; empty for {@code something-else}
 * @param mendTitle the procedure's title
 * @param mendMinutes what the mend costs the owner without access: the procedure's minutes, or the
 *     yard's where the yard or somebody licensed does it
 * @param mendAccess what the owner must open first, in order; empty where the owner does not mend
 * @param cures chance that the mend cures it, 0 to 1
 * @param seen whether the cure shows at once
 * @param mendSkill who may do it
 * @param mendCautions the cautions of doing it; none for {@code something-else}
 */
public record FaultCause(
    String id,
    String title,
    String about,
    double prior,
    String from,
    String mend,
    String mendTitle,
    double mendMinutes,
    List<Access> mendAccess,
    double cures,
    Seen seen,
    Skill mendSkill,
    List<WorkCaution> mendCautions) {

  /** Copies the lists. */
  public FaultCause {
    mendAccess = List.copyOf(mendAccess);
    mendCautions = List.copyOf(mendCautions);
  }

  /** Whether this stands for everything the page does not list. */
  public boolean isSomethingElse() {
    return id.equals(Symptom.SOMETHING_ELSE);
  }

  /** Whether an owner may do the mend; otherwise it is the yard's, or a licensed trade's. */
  public boolean mendedByOwner() {
    return mendSkill.ownerMay();
  }
}
