package limberboard.library.value;

/** Whom work is left to that an owner does not do, and has to be booked with. */
public enum Outsider implements Word {
  /** Whoever works the crane or the travel hoist. */
  CRANE,
  /** A rigger. */
  RIGGER,
  /** Somebody licensed for gas. */
  GAS_FITTER,
  /** Somebody licensed for mains current. */
  ELECTRICIAN,
  /** A surveyor. */
  SURVEYOR,
  /** An engine mechanic. */
  ENGINEER,
  /** A sailmaker. */
  SAILMAKER,
  /** The yard. */
  YARD
}
