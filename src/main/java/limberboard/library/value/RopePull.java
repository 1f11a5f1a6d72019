package limberboard.library.value;

/** What pulls on a rope, as a load that follows from the rig. */
public enum RopePull implements Word {
  /** The headsail's area, foretriangle I·J/2. */
  HEADSAIL,
  /** The mainsail's area, P·E/2. */
  MAINSAIL,
  /** The spinnaker's or gennaker's area, estimated from I and J. */
  SPINNAKER,
  /** The mainsheet, with the mainsail's leech and the boom as its lever. */
  MAINSHEET
}
