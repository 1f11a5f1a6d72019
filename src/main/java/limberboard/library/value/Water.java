package limberboard.library.value;

/** The water a boat lies in. */
public enum Water implements Word {
  /** Sea water. */
  SALT,
  /** Estuaries and inland seas. */
  BRACKISH,
  /** Lakes and rivers. */
  FRESH
}
