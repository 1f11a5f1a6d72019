package limberboard.trace;

import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Check;
import limberboard.library.page.Model.Access;
import limberboard.words.CountWords;

/**
 * One check as it stands on one boat.
 *
 * @param check the page's check: question, how to do it, picture, tools, cautions, who may do it
 * @param minutes what it costs the owner without access; at least the yard's minutes where it is
 *     not the owner's work
 * @param access what the owner must open first, in order; empty where it is not the owner's work
 * @param cautions the cautions of making it
 * @param answered in how many recorded cases of a cause with a name it was answered
 */
public record FaultCheck(
    Check check, double minutes, List<Access> access, List<WorkCaution> cautions, int answered) {
  /** Copies the lists. */
  public FaultCheck {
    access = List.copyOf(access);
    cautions = List.copyOf(cautions);
  }

  /** The check's id. */
  public String id() {
    return check.id();
  }

  /** Where the figures come from that say what an answer means. */
  public String from() {
    return answered == 0
        ? "workshop's estimate"
        : "workshop's estimate and answers in " + CountWords.of(answered, "recorded case");
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
