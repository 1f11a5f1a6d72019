package limberboard.boat;

import limberboard.library.value.Word;

/** How a recorded case came out. */
public enum CaseOutcome implements Word {
  /** The mend cured it, so that the cause is known. */
  MENDED,
  /** The mend of the cause that was thought of was made and did not cure. */
  NOT_MENDED,
  /** The yard, or somebody licensed, took it over. */
  HANDED_OVER,
  /** Nobody knows yet. */
  OPEN
}
