package limberboard.library.value;

/** How a rope is made, and of what. */
public enum RopeConstruction implements Word {
  /** Braided polyester core in a braided polyester cover. */
  POLYESTER_BRAID("polyester, braid on braid"),
  /** Braided core of high-modulus polyethylene in a polyester cover. */
  HMPE_CORE("HMPE core, polyester cover"),
  /** Bare twelve-strand braid of high-modulus polyethylene. */
  HMPE_PLAIN("HMPE, bare 12-strand braid"),
  /** Three-strand polyester. */
  POLYESTER_LAID("polyester, three-strand"),
  /** Three-strand polyamide, which stretches. */
  POLYAMIDE_LAID("polyamide, three-strand");

  private final String title;

  RopeConstruction(String title) {
    this.title = title;
  }

  /** What a rope shop calls it. */
  public String title() {
    return title;
  }
}
