package limberboard.upkeep;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Phase;

/**
 * A piece of work that a person is to do on a boat, with the reason it is on a list.
 *
 * @param work the procedure's page
 * @param phase when in the boat's year it is done
 * @param why the reason
 * @param due the day on which it runs out; empty when it is done without being due
 */
public record Task(Page<Procedure> work, Phase phase, Why why, Optional<LocalDate> due) {}
