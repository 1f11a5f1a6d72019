package limberboard.words;

import limberboard.library.value.Outsider;

/** Whom work is booked with, in words. */
public final class OutsiderWords {
  private OutsiderWords() {}

  /** With whom: {@code a rigger}, {@code the yard}. */
  public static String of(Outsider with) {
    return switch (with) {
      case CRANE -> "the crane";
      case YARD -> "the yard";
      case GAS_FITTER -> "a licensed gas fitter";
      case ELECTRICIAN, ENGINEER -> "an " + with.spoken();
      case RIGGER, SURVEYOR, SAILMAKER -> "a " + with.spoken();
    };
  }
}
