package limberboard.library.value;

/** Who may do a piece of work. */
public enum Skill implements Word {
  /** Any owner. */
  OWNER,
  /** An owner used to tools. */
  HANDY,
  /** The yard. */
  YARD,
  /** Somebody licensed for it; never printed as a do-it-yourself procedure. */
  LICENSED;

  /** Whether an owner may do it. */
  public boolean ownerMay() {
    return this == OWNER || this == HANDY;
  }
}
