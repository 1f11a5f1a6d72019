package limberboard.library.value;

/** When in the boat's year work is done, in the order of a season. */
public enum Phase implements Word {
  /** Ashore, mast down. */
  ASHORE_MAST_DOWN,
  /** Ashore, mast stepped. */
  ASHORE_MAST_UP,
  /** Afloat at the berth. */
  AFLOAT,
  /** Under sail. */
  UNDER_SAIL,
  /** When laying up. */
  LAY_UP
}
