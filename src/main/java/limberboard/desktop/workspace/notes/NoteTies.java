package limberboard.desktop.workspace.notes;

import java.util.Optional;

/**
 * What a note is about.
 *
 * @param page the page, by its id
 * @param boat the boat, by its id
 */
public record NoteTies(Optional<String> page, Optional<String> boat) {
  /** Nothing. */
  public static final NoteTies NONE = new NoteTies(Optional.empty(), Optional.empty());
}
