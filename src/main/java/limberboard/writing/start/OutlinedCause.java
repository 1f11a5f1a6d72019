package limberboard.writing.start;

import java.util.Optional;

/**
 * A cause of an outline.
 *
 * @param id made from its title, unique in the outline
 * @param title what was typed
 * @param about what was typed below it
 * @param weight how common it is, where it was said
 * @param mend a procedure's id, where it was said
 */
public record OutlinedCause(
    String id, String title, String about, Optional<String> weight, Optional<String> mend) {}
