package limberboard.desktop.boats;

/** Asks what is to be done with unsaved changes. */
@FunctionalInterface
public interface UnsavedQuestion {
  /** What can be done. */
  enum Answer {
    /** Save them, then go. */
    SAVE,
    /** Drop them and go. */
    DROP,
    /** Stay. */
    STAY
  }

  /** Asks. */
  Answer ask();
}
