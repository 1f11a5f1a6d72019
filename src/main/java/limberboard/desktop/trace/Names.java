package limberboard.desktop.trace;

import java.util.List;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Session;
import limberboard.library.Caution;
import limberboard.library.Page;
import limberboard.library.Skill;
import limberboard.library.ToolUse;
import limberboard.trace.NextStep;

/** Looks up what pages are called. */
final class Names {
  private final Session session;

  Names(Session session) {
    this.session = session;
  }

  /** The cautions with these ids, as far as the library has them. */
  List<Page<Caution>> cautions(List<String> ids) {
    return ids.stream().flatMap(id -> session.library().caution(id).stream()).toList();
  }

  /** The cautions that a step names: those of its check, or of its mend's page. */
  List<Page<Caution>> cautions(NextStep step) {
    if (step instanceof NextStep.DoCheck check) {
      return cautions(check.check().check().cautions());
    }
    return step instanceof NextStep.DoMend mend
        ? session
            .library()
            .procedure(mend.cause().mend())
            .map(page -> cautions(page.details().cautions()))
            .orElse(List.of())
        : List.of();
  }

  /** The tools that a boat needs, in one line. */
  String tools(List<ToolUse> tools, Fitting fitting) {
    return tools.stream()
        .filter(tool -> fitting.fits(tool.fits()))
        .map(tool -> title(tool.use()))
        .collect(Collectors.joining(", "));
  }

  /** What a page is called; its id when the library does not have it. */
  String title(String id) {
    return session.library().page(id).map(Page::title).orElse(id.replace('-', ' '));
  }

  /** Whether an owner may do work of this skill. */
  static boolean ownerMay(Skill skill) {
    return skill == Skill.OWNER || skill == Skill.HANDY;
  }

  /** Who does what an owner must not. */
  static String otherHands(Skill skill) {
    return skill == Skill.LICENSED
        ? "This is not for you to do: only somebody licensed for this work may. Have it done, then"
            + " give the answer you were told."
        : "This is the yard's work. Have it done, then give the answer you were told.";
  }
}
