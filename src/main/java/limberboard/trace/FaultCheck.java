package limberboard.trace;

import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Check;
import limberboard.library.page.Model.Access;

/**
 * One check as it stands on one boat.
 *
 * @param check the page's check: question, how to do it, picture, tools, cautions, who may do it
 * @param minutes what it costs the owner without access; at least the yard's minutes where it is
 *     not the owner's work
 * @param access what the owner must open first, in order; empty where it is not the owner's work
 * @param cautions the cautions of making it
 */
public record FaultCheck(
    Check check, double minutes, List<Access> access, List<WorkCaution> cautions) {
  /** Copies the lists. */
  public FaultCheck {
    access = List.copyOf(access);
    cautions = List.copyOf(cautions);
  }

  /** The check's id. */
  public String id() {
    return check.id();
  }

  /** The question. */
  public String ask() {
    return check.ask();
  }

  /** The possible answers, as in the file. */
  public List<String> answers() {
    return check.answers();
  }
}
