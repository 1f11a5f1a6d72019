package limberboard.workings;

/** Which units are written beside the metric ones. */
public enum UnitsBeside {
  /** None. */
  NOTHING,
  /** British imperial units; pints and gallons are named as imperial ones. */
  IMPERIAL,
  /** United States customary units; pints and gallons are named as US ones. */
  US_CUSTOMARY
}
