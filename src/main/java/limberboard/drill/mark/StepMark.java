package limberboard.drill.mark;

import java.util.List;
import java.util.Optional;
import limberboard.drill.StepDone;
import limberboard.trace.NextStep;

/**
 * One step of a drill, gone through afterwards.
 *
 * @param done the step
 * @param known the likeliest causes by what was known before it
 * @param best the best step there, with its reason
 * @param regret what the step cost more on average than the best one, in minutes, 0 or more
 * @param doubt how much of what the best step is expected to cost is not proven, in minutes
 * @param mistake what was wrong with it, where it cost more than half a minute
 * @param dangers what could have hurt somebody
 * @param meaning what its answer changed, or nothing
 */
public record StepMark(
    StepDone done,
    List<Known> known,
    NextStep best,
    double regret,
    double doubt,
    Optional<MistakeKind> mistake,
    List<DrillDanger> dangers,
    String meaning) {

  /**
   * A cause as it stood.
   *
   * @param cause cause id
   * @param title its title
   * @param chance its chance, 0 to 1
   */
  public record Known(String cause, String title, double chance) {}

  /** Copies the lists. */
  public StepMark {
    known = List.copyOf(known);
    dangers = List.copyOf(dangers);
  }
}
