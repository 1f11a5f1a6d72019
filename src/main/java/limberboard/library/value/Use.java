package limberboard.library.value;

/** What a boat is used for. */
public enum Use implements Word {
  /** Its owner's own sailing. */
  PRIVATE,
  /** Regular racing. */
  CLUB_RACING,
  /** Hired out. */
  CHARTER,
  /** Teaching. */
  SAILING_SCHOOL
}
