/**
 * Drawings: the tree of a fault and the time line of a season, laid out once and written as SVG.
 *
 * <p><b>Choices made.</b> Laid out with the real widths of words; the window draws from the same
 * layout.
 */
package limberboard.print.drawing;
