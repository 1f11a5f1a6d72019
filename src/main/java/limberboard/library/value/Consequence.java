package limberboard.library.value;

/** What follows when work is left undone, gravest first: the trade's small scale. */
public enum Consequence implements Word {
  /** It can sink her, or kill somebody. */
  SINKS("can sink her, or kill somebody"),
  /** It can hurt somebody, or lose the rig, the rudder or the keel. */
  HURTS("can hurt somebody, or lose the rig, rudder or keel"),
  /** It can stop the boat. */
  STOPS("can stop the boat"),
  /** It costs money later. */
  COSTS("costs money later"),
  /** It is only seen. */
  LOOKS("only looks worse");

  /** What is taken where a page does not say. */
  public static final Consequence UNSAID = COSTS;

  private final String said;

  Consequence(String said) {
    this.said = said;
  }

  /** What follows, to be read after "left undone": {@code can stop the boat}. */
  public String said() {
    return said;
  }
}
