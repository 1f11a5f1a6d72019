package limberboard.words;

import limberboard.library.value.Skill;

/** Who may do work, in words. Stateless. */
public final class SkillWords {
  private SkillWords() {}

  /** Who does it: {@code an owner used to tools}. */
  public static String of(Skill skill) {
    return switch (skill) {
      case OWNER -> "any owner";
      case HANDY -> "an owner used to tools";
      case YARD -> "the yard";
      case LICENSED -> "only a person licensed for it";
    };
  }

  /** As short as can be, for lists: {@code used to tools}, {@code the yard}. */
  public static String brief(Skill skill) {
    return switch (skill) {
      case OWNER, YARD -> of(skill);
      case HANDY -> "used to tools";
      case LICENSED -> whose(skill);
    };
  }

  /** Whom it is for: {@code for the yard}, {@code only for a person licensed for it}. */
  public static String whose(Skill skill) {
    return skill == Skill.LICENSED ? "only for a person licensed for it" : "for " + of(skill);
  }
}
