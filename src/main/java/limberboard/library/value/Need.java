package limberboard.library.value;

/** How much recurring work is needed, most needed first. */
public enum Need implements Word {
  /** No careful owner leaves it out. */
  MUST,
  /** A careful owner does it. */
  SHOULD,
  /** For whoever likes to. */
  OPTIONAL;

  /** What is taken where a page does not say. */
  public static final Need UNSAID = SHOULD;
}
