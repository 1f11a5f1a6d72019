package limberboard.drill.file;

import java.util.List;
import java.util.Optional;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillStep;

/**
 * A drill as a file keeps it: ordered, and perhaps played by a student. Marks are not kept in it;
 * they follow from the steps.
 *
 * @param order what the drill is made from
 * @param stamp of the fault that it was made on; a result holds for that alone
 * @param student a name or a number; empty when nobody is named
 * @param key tells two students of one name apart, or empty
 * @param steps what was done, in order; none of a drill that was only ordered
 */
public record KeptDrill(
    DrillOrder order,
    String stamp,
    Optional<String> student,
    Optional<String> key,
    List<DrillStep> steps) {
  /** Copies the list. */
  public KeptDrill {
    steps = List.copyOf(steps);
  }
}
