package limberboard.drill.mark;

import limberboard.library.value.Word;

/** What was wrong with a step that cost minutes. */
public enum MistakeKind implements Word {
  /** A check, and another one would have come first. */
  OTHER_CHECK_FIRST("another check would have come first"),
  /** A check, and what was known was enough to mend. */
  CHECKED_ON("enough was known to mend"),
  /** A check or mend, and it was time for the yard. */
  YARD_TOO_LATE("it was time for the yard"),
  /** A check or mend that was made before, or whose answer had been told. */
  DONE_AGAIN("it was known already"),
  /** Something opened that was not needed for the best step. */
  OPENED_IN_VAIN("it need not have been opened"),
  /** A mend, and a check would have paid first. */
  MENDED_TOO_SOON("a check would have paid first"),
  /** A mend, and another one would have come first. */
  OTHER_MEND_FIRST("another mend would have come first"),
  /** The yard, and a check or mend would have paid first. */
  YARD_TOO_SOON("a check or mend would have paid first"),
  /** The yard, told a cause that was not the likeliest, or none. */
  YARD_TOLD_WRONG("the yard was not told the likeliest cause"),
  /** Made safe without looking. */
  NOT_LOOKED("it was not looked at"),
  /** A hint. */
  HINT("a hint"),
  /** Giving up. */
  GAVE_UP("given up");

  private final String said;

  MistakeKind(String said) {
    this.said = said;
  }

  /** What was wrong, in words. */
  public String said() {
    return said;
  }
}
