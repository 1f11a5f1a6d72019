package limberboard.desktop.trace;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.trace.CautionsRead;
import limberboard.trace.NextStep;
import limberboard.trace.TrailStep;

/**
 * What is kept of a trace that is not over until it is gone on with: nothing that can be worked out
 * again. Immutable.
 *
 * @param boat the boat's id
 * @param symptom the symptom's id
 * @param started the day it was begun
 * @param cautionsRead whether the symptom's cautions have been gone on from
 * @param read which cautions have been read; empty in what was kept before that was noted
 * @param steps what has been answered and tried, in order
 * @param picked the step chosen instead of the one advised
 */
public record KeptTrace(
    String boat,
    String symptom,
    LocalDate started,
    boolean cautionsRead,
    Optional<Set<CautionsRead.Read>> read,
    List<TrailStep> steps,
    Optional<NextStep.Which> picked) {

  /** Copies steps and cautions. */
  public KeptTrace {
    read = read.map(Set::copyOf);
    steps = List.copyOf(steps);
  }

  /** Which trace it is, among all of a workspace. */
  TraceKey key() {
    return new TraceKey(boat, symptom);
  }
}
