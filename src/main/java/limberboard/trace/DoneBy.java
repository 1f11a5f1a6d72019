package limberboard.trace;

import limberboard.library.value.Skill;

/** Who does a piece of work, in words. */
final class DoneBy {
  private DoneBy() {}

  /** Whether an owner may do it. */
  static boolean ownerMay(Skill skill) {
    return skill == Skill.OWNER || skill == Skill.HANDY;
  }

  /** Whose work it is: "work for the yard". */
  static String workFor(Skill skill) {
    return switch (skill) {
      case OWNER -> "work for any owner";
      case HANDY -> "work for an owner used to tools";
      case YARD -> "work for the yard";
      case LICENSED -> "work for somebody licensed for it";
    };
  }
}
