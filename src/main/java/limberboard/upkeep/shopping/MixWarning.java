package limberboard.upkeep.shopping;

import java.util.List;

/**
 * Things on a list that must not be mixed, or be brought together only with care.
 *
 * @param grade how serious it is
 * @param what what must not come together
 * @param why what would happen, and what to do instead
 * @param source where this is written; {@value #PRACTICE} where it is nowhere
 * @param materials ids of the materials it is about
 * @param work ids of the procedures it is about; empty when it is about the boat or the store
 */
public record MixWarning(
    Grade grade,
    String what,
    String why,
    String source,
    List<String> materials,
    List<String> work) {
  /** What is said where there is no source. */
  public static final String PRACTICE = "common practice, no source";

  /** Copies the lists. */
  public MixWarning {
    materials = List.copyOf(materials);
    work = List.copyOf(work);
  }

  /** How serious a warning is. */
  public enum Grade {
    /** It does harm as the list stands. */
    NEVER,
    /** It does harm if the two meet. */
    TAKE_CARE
  }
}
