package limberboard.library.value;

/** Whose own a page is: it is changed only by copies of the workspace that are theirs. */
public enum Own implements Word {
  /** An owner's: notes on a boat, say. */
  OWNER,
  /** A dealer's. */
  DEALER,
  /** The yard's. */
  YARD
}
