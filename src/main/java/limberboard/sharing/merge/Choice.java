package limberboard.sharing.merge;

import limberboard.library.value.Word;

/** How a conflict is settled. */
public enum Choice implements Word {
  /** As this copy has it. */
  OURS,
  /** As the other copy has it. */
  THEIRS,
  /** Both, ours first: only where both put something in, or a page is to stay beside the other. */
  BOTH,
  /** As it was before either changed it. */
  BEFORE
}
