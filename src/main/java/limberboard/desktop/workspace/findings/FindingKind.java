package limberboard.desktop.workspace.findings;

/** What kind of finding it is. */
public enum FindingKind {
  /** Something does not work. */
  BROKEN("does not work"),
  /** Worth a look. */
  LOOK("worth a look"),
  /** The planner says so. */
  PLAN("by the planner"),
  /** Something to write or to mend next, by cases and searches. */
  WRITE("to write next");

  private final String words;

  FindingKind(String words) {
    this.words = words;
  }

  /** What a person reads. */
  public String words() {
    return words;
  }
}
