package limberboard.letters.recognise;

/**
 * How figures of a letter become chances.
 *
 * @param symptom that it tells of a symptom
 * @param fault that it tells of a fault
 * @param covered that the library covers what it tells
 * @param urgent that it is urgent
 * @param answer that words in it answer a check
 */
record Chances(
    Coefficients symptom,
    Coefficients fault,
    Coefficients covered,
    Coefficients urgent,
    Coefficients answer) {
  static final String UNTAUGHT = "untaught ";
  static final String SYMPTOM = "symptom";
  static final String FAULT = "fault";
  static final String COVERED = "covered";
  static final String URGENT = "urgent";
  static final String ANSWER = "answer";

  /** Chances that say nothing. */
  static final Chances NONE =
      new Chances(
          Coefficients.NONE,
          Coefficients.NONE,
          Coefficients.NONE,
          Coefficients.NONE,
          Coefficients.NONE);

  /**
   * Those that come with the program.
   *
   * @param taught whether many letters are recorded; where few are, the pages must do, and figures
   *     mean something else
   */
  static Chances given(boolean taught) {
    String before = taught ? "" : UNTAUGHT;
    return new Chances(
        Coefficients.named(before + SYMPTOM),
        Coefficients.named(before + FAULT),
        Coefficients.named(before + COVERED),
        Coefficients.named(before + URGENT),
        Coefficients.named(before + ANSWER));
  }
}
