package limberboard.print.page;

import java.util.List;

/**
 * One part of a cut page.
 *
 * @param role what it is for
 * @param title its heading, or empty
 * @param blocks what stands in it
 */
public record Part(Role role, String title, List<Block> blocks) {
  /** Copies the list. */
  public Part {
    blocks = List.copyOf(blocks);
  }

  /** What parts are for, in the order in which they stand on a page. */
  public enum Role {
    /** Dangers in two lines each, and in full what may be an emergency; always the first. */
    CAUTIONS,
    /** Who may do the work; whether the page is for this boat at all. */
    NOTICE,
    /** Who, how long, where, and other facts. */
    FACTS,
    /** How often, and when to look again. */
    AGAIN,
    /** What must be opened first. */
    ACCESS,
    /** Tools and materials to take along. */
    TOOLS,
    /** Materials with amounts. */
    MATERIALS,
    /** What good and bad look like. */
    LOOK_FOR,
    /** Causes of a symptom. */
    CAUSES,
    /** Checks of a symptom. */
    CHECKS,
    /** Work of a list, to be ticked off. */
    WORK,
    /** What is due on a boat. */
    DUE,
    /** The seasons to come, drawn. */
    TIME_LINE,
    /** Tables of a model page. */
    TABLES,
    /** A list to work from, with boxes to tick. */
    ROPES,
    /** The sums behind a list's figures. */
    SUMS,
    /** The page's own text. */
    BODY,
    /** Figures that other pages quote, each with its source. */
    FIGURES,
    /** Sums with their formula, numbers and source. */
    WORKINGS,
    /** Keys of a header whose values changed from one version to another. */
    CHANGED_KEYS,
    /** What a later version of a text has no more. */
    TAKEN_OUT,
    /** What a later version of a text has and the earlier had not. */
    ADDED,
    /** What was left out for this boat, and why. */
    LEFT_OUT,
    /** Pages that belong to it. */
    RELATED,
    /** Where the facts come from. */
    SOURCES,
    /** Dangers in full, once; always the last. */
    CAUTIONS_IN_FULL
  }
}
