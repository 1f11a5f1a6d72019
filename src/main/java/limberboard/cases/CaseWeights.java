package limberboard.cases;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;

/**
 * How much recorded cases count, all in one place.
 *
 * <p>The workshop's estimate of how common the causes of a symptom are is worth {@value
 * #CAUSES_WORTH} cases of the very same boat, its estimate of the answers to a check under one
 * cause {@value #ANSWERS_WORTH} such cases of that cause. A case of another boat counts less: it is
 * multiplied by {@value #OTHER_MODEL} for another model, {@value #OTHER_WATER} for another water,
 * {@value #OTHER_USE} for another use, and {@value #OTHER_AGE} where the boats' ages differ by more
 * than {@value #YEARS_ALIKE} years. What the case does not say counts as another. These figures are
 * common practice, no source.
 */
public final class CaseWeights {
  /** How many cases of the same boat the estimate of the causes is worth. */
  public static final double CAUSES_WORTH = 20;

  /** How many cases of a cause the estimate of the answers to one check is worth. */
  public static final double ANSWERS_WORTH = 10;

  /** A case of another model counts so much. */
  public static final double OTHER_MODEL = 0.5;

  /** A case from another water counts so much. */
  public static final double OTHER_WATER = 0.7;

  /** A case of another use counts so much. */
  public static final double OTHER_USE = 0.7;

  /** A case of a boat of quite another age counts so much. */
  public static final double OTHER_AGE = 0.7;

  /** Boats whose ages differ by no more than this are of the same age. */
  public static final int YEARS_ALIKE = 8;

  private CaseWeights() {}

  /** How much a case counts for a boat on a day, more than 0, at most 1. */
  public static double of(RecordedCase recorded, Fitting fitting) {
    Boat boat = fitting.boat();
    return (sameModel(recorded, boat) ? 1 : OTHER_MODEL)
        * (sameWater(recorded, boat) ? 1 : OTHER_WATER)
        * (sameUse(recorded, boat) ? 1 : OTHER_USE)
        * (sameAge(recorded, fitting) ? 1 : OTHER_AGE);
  }

  /** What of a case's boat is as with this boat, in words: "the same model", "the same water". */
  public static List<String> alike(RecordedCase recorded, Fitting fitting) {
    List<String> same = new ArrayList<>();
    if (sameModel(recorded, fitting.boat())) {
      same.add("the same model");
    }
    if (sameAge(recorded, fitting)) {
      same.add("about the same age");
    }
    if (sameWater(recorded, fitting.boat())) {
      same.add("the same water");
    }
    if (sameUse(recorded, fitting.boat())) {
      same.add("the same use");
    }
    return List.copyOf(same);
  }

  private static boolean sameModel(RecordedCase recorded, Boat boat) {
    return recorded.boat().model().equals(boat.model().id());
  }

  private static boolean sameWater(RecordedCase recorded, Boat boat) {
    return recorded.boat().water().equals(Optional.of(boat.water()));
  }

  private static boolean sameUse(RecordedCase recorded, Boat boat) {
    return recorded.boat().use().equals(Optional.of(boat.use()));
  }

  private static boolean sameAge(RecordedCase recorded, Fitting fitting) {
    if (recorded.boat().built().isEmpty()) {
      return false;
    }
    int then = recorded.date().getYear() - recorded.boat().built().getAsInt();
    int now = Period.between(fitting.boat().ageFrom(), fitting.on()).getYears();
    return Math.abs(then - now) <= YEARS_ALIKE;
  }
}
