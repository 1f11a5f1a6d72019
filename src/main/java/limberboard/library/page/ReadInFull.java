package limberboard.library.page;

import java.time.LocalDate;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/**
 * That somebody has read a page in full.
 *
 * @param on the day
 * @param by what kind of reader: a shipwright, a rigger, somebody who did not write it
 * @param of a short digest of what was read, so that a later change shows; empty: not noted
 */
public record ReadInFull(@Required LocalDate on, @Required String by, String of) {
  /** Absent entries become empty ones. */
  public ReadInFull {
    of = EmptyValues.text(of);
  }
}
