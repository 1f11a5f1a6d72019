package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonCreator;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;

/**
 * A tool that work needs; written as its id alone or as {@code {use: id, fits: {…}}}.
 *
 * @param use material id of a tool
 * @param fits which boats need it
 */
public record ToolUse(@Required @Names(Named.TOOL) String use, Condition fits) {
  /** Absent entries become empty ones. */
  public ToolUse {
    fits = EmptyValues.condition(fits);
  }

  /** A tool that every boat needs. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static ToolUse always(String use) {
    return new ToolUse(use, Condition.ALWAYS);
  }
}
