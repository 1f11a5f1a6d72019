package limberboard.library.value;

/** What a procedure does. */
public enum Work implements Word {
  /** Looks at something. */
  INSPECT,
  /** Keeps something going. */
  SERVICE,
  /** Replaces something that wears. */
  RENEW,
  /** Puts a fault right. */
  MEND
}
