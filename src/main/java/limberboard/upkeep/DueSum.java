package limberboard.upkeep;

import java.util.List;
import limberboard.words.CountWords;
import limberboard.words.Minutes;

/**
 * How much due work is.
 *
 * @param works pieces of work; what is done with a round counts with the round
 * @param minutes of the owner, practised, without opening what is in the way
 */
public record DueSum(int works, int minutes) {
  /** The sum of this. */
  static DueSum of(List<Due> all) {
    return new DueSum(
        (int) all.stream().filter(due -> due.round().isEmpty()).count(),
        all.stream().mapToInt(Due::ownerMinutes).sum());
  }

  /** The time, with whom it is for: {@code 2 h practised, 3 h the first time}. */
  public String time() {
    return Minutes.forWhom(minutes);
  }

  /** All of it: {@code 3 pieces of work, 2 h practised, 3 h the first time}. */
  public String words() {
    return CountWords.of(works, "piece of work", "pieces of work") + ", " + time();
  }
}
