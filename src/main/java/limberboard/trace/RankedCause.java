package limberboard.trace;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import limberboard.effort.Situation;
import limberboard.words.ChanceWords;

/**
 * A cause with its chance.
 *
 * @param cause the cause
 * @param chance its chance now, 0 to 1
 * @param before its chance without the last answer, 0 to 1
 * @param word the chance in words for a list, see {@link ChanceWords#listed}
 */
public record RankedCause(FaultCause cause, double chance, double before, String word) {

  /** All causes by falling chance, the page's order deciding between equals. */
  static List<RankedCause> all(Fault fault, Trail trail, Situation situation) {
    double[] now = situation.chances();
    double[] before = trail.latest().map(step -> trail.without(step).chances(fault)).orElse(now);
    return IntStream.range(0, now.length)
        .mapToObj(
            i ->
                new RankedCause(
                    fault.causes().get(i), now[i], before[i], ChanceWords.listed(now[i])))
        .sorted(Comparator.comparingDouble(RankedCause::chance).reversed())
        .toList();
  }
}
