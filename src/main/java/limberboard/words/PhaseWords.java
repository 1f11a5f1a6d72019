package limberboard.words;

import limberboard.library.value.Phase;

/** Parts of a boat's year in words. */
public final class PhaseWords {
  private PhaseWords() {}

  /** In a sentence about work: {@code ashore with the mast down}. */
  public static String of(Phase phase) {
    return switch (phase) {
      case ASHORE_MAST_DOWN -> "ashore with the mast down";
      case ASHORE_MAST_UP -> "ashore with the mast up";
      case AFLOAT -> "afloat";
      case UNDER_SAIL -> "under sail";
      case LAY_UP -> "when laying up";
    };
  }

  /** As short as can be: {@code ashore}, {@code afloat}. */
  public static String brief(Phase phase) {
    return switch (phase) {
      case ASHORE_MAST_DOWN, ASHORE_MAST_UP -> "ashore";
      case AFLOAT -> "afloat";
      case UNDER_SAIL -> "under sail";
      case LAY_UP -> "at lay-up";
    };
  }
}
