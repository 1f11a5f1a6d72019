/**
 * Values of headers: amounts with units, ranges, periods, likelihoods, conditions, and the closed
 * lists of words (skills, phases, systems, kinds of rope).
 *
 * <p><b>Choices made.</b> A closed list implements {@link limberboard.library.value.Word}, by which
 * headers are read and mistakes told. Values know no pages and no boat.
 */
package limberboard.library.value;
