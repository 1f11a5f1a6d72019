package limberboard.desktop.workspace.findings;

/** What kind of finding it is. */
public enum FindingKind {
  /** Something does not work. */
  BROKEN("does not work"),
  /** A proofreader finds what can hurt somebody. */
  HURTS("can hurt somebody"),
  /** Worth a look. */
  LOOK("worth a look"),
  /** A proofreader finds it. */
  PROOF("by the proofreader"),
  /** The planner says so. */
  PLAN("by the planner"),
  /** Something to write or to mend next, by cases and searches. */
  WRITE("to write next"),
  /** A page was read in full, and is to be read again. */
  AGAIN("to be read again"),
  /** A page has never been read in full. */
  UNREAD("never read in full");

  private final String words;

  FindingKind(String words) {
    this.words = words;
  }

  /**
   * Whether it stands in the list of all findings. Pages that nobody has ever read are far too many
   * for that in most libraries, and are listed by themselves.
   */
  public boolean isAmongAll() {
    return this != UNREAD;
  }

  /** What a person reads. */
  public String words() {
    return words;
  }
}
