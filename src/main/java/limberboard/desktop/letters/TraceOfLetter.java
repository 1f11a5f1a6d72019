package limberboard.desktop.letters;

/** Goes on with a symptom of a letter in the trace place. */
@FunctionalInterface
interface TraceOfLetter {
  /** Traces a symptom on the letter's boat, with the answers that the letter gives. */
  void go(Understanding letter, String symptom);
}
