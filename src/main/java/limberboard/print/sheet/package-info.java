/**
 * Sheets made of what was worked out: due, lists, shopping, rigging, a trace; as a page, and as CSV
 * where a table helps.
 *
 * <p><b>Choices made.</b> A sheet is a cut page like any other, and so comes out of every renderer
 * with its cautions.
 */
package limberboard.print.sheet;
