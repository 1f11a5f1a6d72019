package limberboard.library.value;

/** When in the boat's year work is done, in the order of a season. */
public enum Phase implements Word {
  /** Ashore, mast down. */
  ASHORE_MAST_DOWN("ashore with the mast down"),
  /** Ashore, mast stepped. */
  ASHORE_MAST_UP("ashore with the mast stepped"),
  /** Afloat at the berth. */
  AFLOAT("afloat at the berth"),
  /** Under sail. */
  UNDER_SAIL("under sail"),
  /** When laying up. */
  LAY_UP("when laying up");

  private final String when;

  Phase(String when) {
    this.when = when;
  }

  /** When that is, within a sentence. */
  public String when() {
    return when;
  }
}
