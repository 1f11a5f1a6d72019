package limberboard.library.value;

/** How an end of a rope is finished. */
public enum RopeEnd implements Word {
  /** An eye spliced into the rope. */
  EYE_SPLICE,
  /** A knot that carries the load. */
  KNOT,
  /** A whipped end that carries nothing by itself: it is held by a winch, clutch, cleat or hand. */
  WHIPPING
}
