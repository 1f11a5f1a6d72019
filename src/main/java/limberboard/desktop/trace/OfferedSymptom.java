package limberboard.desktop.trace;

import limberboard.boat.Fit;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/**
 * A symptom that may be chosen.
 *
 * @param page the symptom
 * @param fit whether the boat can have it, with the reason
 * @param here whether it is noticed in the chosen zone; true when none is chosen
 */
public record OfferedSymptom(Page<Symptom> page, Fit fit, boolean here) {}
