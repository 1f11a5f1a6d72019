package limberboard.search;

import limberboard.boat.Fit;
import limberboard.library.page.Kind;

/**
 * A page that was found.
 *
 * @param id the page's id
 * @param kind the page's kind
 * @param title the page's title
 * @param score how well it answers, greater than 0; comparable only within one search
 * @param passage the place in it that answers best
 * @param fit whether the page is for the boat asked for, with the reason; without a boat it fits
 */
public record Hit(String id, Kind kind, String title, double score, Excerpt passage, Fit fit) {}
