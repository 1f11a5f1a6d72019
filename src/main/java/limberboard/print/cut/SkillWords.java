package limberboard.print.cut;

import java.util.Optional;
import limberboard.library.value.Skill;
import limberboard.print.page.Part;

/** Who may do work, in words. */
public final class SkillWords {
  /** What stands in place of the steps of licensed work. */
  static final String STEPS_NOT_PRINTED =
      "A person licensed for it does this work, so its steps are not printed here.";

  private SkillWords() {}

  public static String of(Skill skill) {
    return switch (skill) {
      case OWNER -> "any owner";
      case HANDY -> "an owner used to tools";
      case YARD -> "the yard";
      case LICENSED -> "only a person licensed for it";
    };
  }

  /** The notice that comes before everything else for work that is not the owner's. */
  static Optional<Part> notice(Skill skill) {
    return switch (skill) {
      case OWNER, HANDY -> Optional.empty();
      case YARD ->
          Optional.of(
              PageParts.notice(
                  "Who may do this",
                  "This is work for the yard. Read here what will be done, and leave the doing to"
                      + " people who have the gear and the practice."));
      case LICENSED ->
          Optional.of(
              PageParts.notice(
                  "Who may do this",
                  "Only a person licensed for this work may do it. Local codes and the licensed"
                      + " trade come before anything on this page."));
    };
  }
}
