package limberboard.search;

import limberboard.boat.Fit;
import limberboard.library.page.Kind;

/**
 * A document that may become a hit.
 *
 * @param document its number in the index
 * @param id the page's id
 * @param kind the page's kind
 * @param title the page's title
 * @param fit whether it is for the boat asked for
 * @param score how well it answers
 */
record RankedPage(int document, String id, Kind kind, String title, Fit fit, double score) {}
