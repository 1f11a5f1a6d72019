package limberboard.drill;

import java.util.List;
import java.util.Set;
import limberboard.boat.WorkCaution;
import limberboard.effort.Situation;

/**
 * A step as it was done.
 *
 * @param step the step
 * @param before where the drill stood, as numbers
 * @param minutes what it cost, with what was opened for it
 * @param reply what came of it
 * @param unheeded cautions of the work whose step was left out, each named once in a drill
 * @param unsafe whether it was done before what safety demands first
 * @param opened ids of access opened for it
 */
public record StepDone(
    DrillStep step,
    Situation before,
    double minutes,
    DrillReply reply,
    List<WorkCaution> unheeded,
    boolean unsafe,
    Set<String> opened) {
  /** Copies the lists. */
  public StepDone {
    unheeded = List.copyOf(unheeded);
    opened = Set.copyOf(opened);
  }
}
