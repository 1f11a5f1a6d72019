package limberboard.drill.mark;

import limberboard.library.value.Word;

/**
 * Something done in a drill that could have hurt somebody.
 *
 * @param kind what kind it is
 * @param id of the caution, of the cause whose mend it was, or of the check that safety demands
 * @param said in words
 */
public record DrillDanger(Kind kind, String id, String said) {
  /** Kinds of dangers. */
  public enum Kind implements Word {
    /** A caution's step was left out. */
    CAUTION_LEFT_OUT,
    /** Work for the yard or for a licensed person was begun oneself. */
    NOT_YOURS,
    /** Something was done before what safety demands first. */
    NOT_SAFE_FIRST
  }
}
