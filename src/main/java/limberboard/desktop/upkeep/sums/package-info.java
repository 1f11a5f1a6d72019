/**
 * The sums of the trade, with a form for each.
 *
 * <p><b>Choices made.</b> Reckoned at once, on the event thread, because it takes no time.
 */
package limberboard.desktop.upkeep.sums;
