package limberboard.trace;

import java.util.List;

/**
 * Answers that do not go together: no cause of the list explains them all.
 *
 * @param text what is wrong and what to do about it, in sentences
 * @param leading the listed cause that explains them best
 * @param against the answers that speak against it, the strongest first: the ones to check again
 */
public record Contradiction(String text, FaultCause leading, List<Against> against) {
  /** Copies the answers. */
  public Contradiction {
    against = List.copyOf(against);
  }

  /**
   * An answer that speaks against the leading cause.
   *
   * @param check the check
   * @param answer its answer, as in the file
   * @param chance the leading cause's chance as it is, 0 to 1
   * @param without the leading cause's chance without this answer, 0 to 1, above {@code chance}
   */
  public record Against(FaultCheck check, String answer, double chance, double without) {}
}
