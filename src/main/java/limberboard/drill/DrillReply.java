package limberboard.drill;

import limberboard.library.value.Word;

/**
 * What comes of a step.
 *
 * @param kind what kind of reply it is
 * @param said in words
 */
public record DrillReply(Kind kind, String said) {
  /** Kinds of replies. */
  public enum Kind implements Word {
    /** A check gave an answer. */
    ANSWER,
    /** A check could not be told. */
    CANT_TELL,
    /** Something is open now. */
    OPENED,
    /** A caution's step was taken. */
    HEEDED,
    /** It was made safe. */
    MADE_SAFE,
    /** A mend cured the fault; the drill ends. */
    MENDED,
    /** A mend did not cure it. */
    NOT_CURED,
    /** Work that is not the student's to do was not done. */
    NOT_YOURS,
    /** The yard has it; the drill ends. */
    HANDED_OVER,
    /** A hint was given. */
    HINT,
    /** The student gave up; the drill ends. */
    GAVE_UP
  }

  /** Whether the drill ends with it. */
  public boolean ends() {
    return kind == Kind.MENDED || kind == Kind.HANDED_OVER || kind == Kind.GAVE_UP;
  }
}
