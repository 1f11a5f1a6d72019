package limberboard.desktop.drills;

/** How far a drill has come. */
enum DrillStage {
  /** None has been begun. */
  NONE,
  /** The owner's letter, the boat and the cautions are read. */
  LETTER,
  /** Steps are taken. */
  WORKING,
  /** It is over and not marked: marking goes on, or was stopped. */
  OVER,
  /** It is over and marked. */
  MARKED
}
