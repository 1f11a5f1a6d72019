package limberboard.desktop.trace;

/** How far a trace has come. */
public enum Stage {
  /** The library is being read. */
  READING,
  /** No boat is chosen. */
  NO_BOAT,
  /** A place and a symptom are to be chosen. */
  CHOOSING,
  /** The symptom's cautions are to be read before anything else. */
  CAUTIONS,
  /** A check is to be made. */
  CHECK,
  /** A mend is to be tried. */
  MEND,
  /** The yard is to be called. */
  YARD,
  /** The fault is mended. */
  MENDED;

  /** Whether the trace is under way: the cautions have been read. */
  public boolean isUnderWay() {
    return compareTo(CHECK) >= 0;
  }
}
