/**
 * Values of headers: amounts with units, ranges, periods, likelihoods, conditions, and the closed
 * lists of words (skills, phases, systems, kinds of rope).
 *
 * <pre>{@code
 * import limberboard.library.value.*;
 *
 * assert Range.parse("2008/2012").contains(2010);
 * assert Likelihood.parse("often").value() > Likelihood.parse("seldom").value();
 * assert Amount.of("200 cm") instanceof Amount.Fixed length
 *     && KnownUnit.METRES.of(length.quantity()).getAsDouble() == 2;
 * assert FigureValue.parse("a day").equalTo(FigureValue.parse("24 h"));
 * assert Phase.ASHORE_MAST_DOWN.word().equals("ashore-mast-down");
 * }</pre>
 *
 * <p><b>Choices made.</b> A closed list implements {@link limberboard.library.value.Word}, by which
 * headers are read and mistakes told. Values know no pages and no boat. Reading one from text
 * throws an {@link java.lang.IllegalArgumentException} whose message says what to write; the binder
 * of headers makes a problem of it.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.library.value;
