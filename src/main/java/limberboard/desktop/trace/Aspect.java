package limberboard.desktop.trace;

/** What is looked at while a fault is traced. */
public enum Aspect {
  /** The next step: a question, a mend, the yard. */
  STEP("Next step", 'N'),
  /** Why it is the next step, and what else could be done. */
  WHY("Why", 'Y'),
  /** The whole strategy. */
  TREE("The whole tree", 'W'),
  /** The cautions in full; one goes back from there to what was looked at before. */
  CAUTIONS("The cautions in full", 'F');

  private final String title;
  private final char mnemonic;

  Aspect(String title, char mnemonic) {
    this.title = title;
    this.mnemonic = mnemonic;
  }

  /** Whether it is one of those to choose from, and no look aside. */
  boolean isChosen() {
    return this != CAUTIONS;
  }

  /** What a person reads. */
  public String title() {
    return title;
  }

  /** The key that goes there together with Alt. */
  public char mnemonic() {
    return mnemonic;
  }
}
