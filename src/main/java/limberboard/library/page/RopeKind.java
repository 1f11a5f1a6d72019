package limberboard.library.page;

import limberboard.library.value.Amount;
import limberboard.library.value.Required;
import limberboard.library.value.RopeConstruction;

/**
 * Which rope a cordage material is.
 *
 * @param construction how it is made
 * @param diameter its nominal diameter
 */
public record RopeKind(@Required RopeConstruction construction, @Required Amount.Fixed diameter) {}
