package limberboard.desktop.trace;

import java.util.List;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Session;
import limberboard.library.page.Page;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Skill;
import limberboard.words.Sentences;

/** Looks up what pages are called. */
public final class PageTitles {
  private final Session session;

  /** Titles of what the library has. */
  public PageTitles(Session session) {
    this.session = session;
  }

  /** The tools that a boat needs, in one line. */
  public String tools(List<ToolUse> tools, Fitting fitting) {
    return tools.stream()
        .filter(tool -> fitting.fits(tool.fits()))
        .map(tool -> title(tool.use()))
        .collect(Collectors.joining(", "));
  }

  /** What a page is called; its id when the library does not have it. */
  String title(String id) {
    return session.library().page(id).map(Page::title).orElse(Sentences.spoken(id));
  }

  /** Who does what an owner must not. */
  static String otherHands(Skill skill) {
    return skill == Skill.LICENSED
        ? "This is not for you to do: only somebody licensed for this work may. Have it done, then"
            + " give the answer you were told."
        : "This is the yard's work. Have it done, then give the answer you were told.";
  }
}
