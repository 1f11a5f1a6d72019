package limberboard.library.page;

import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/**
 * What an author answers to something that a proofreader finds and that is as it should be.
 *
 * @param rule the rule's name, as the finding has it
 * @param about what the finding is about; empty: whatever the rule finds on the page
 * @param why why it is right as it stands
 */
public record AuthorAnswer(@Required String rule, String about, @Required String why) {
  /** Absent entries become empty ones. */
  public AuthorAnswer {
    about = EmptyValues.text(about);
  }
}
