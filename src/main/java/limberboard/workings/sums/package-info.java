/**
 * Sums: small calculations of the trade, each with its formula, its source and the range it holds
 * in.
 *
 * <p>To use them:
 *
 * <ol>
 *   <li>take a {@link limberboard.workings.sums.Sum} from {@link limberboard.workings.sums.Sums};
 *   <li>put {@link limberboard.workings.sums.Value values} in by the ids of its {@link
 *       limberboard.workings.sums.Input inputs}, as many or as few as you like, with {@link
 *       limberboard.workings.sums.Sum#defaultsFor} beneath them where a boat is known, and call
 *       {@link limberboard.workings.sums.Sum#reckon};
 *   <li>look at the {@link limberboard.workings.sums.Reckoning}: done, with results, the working in
 *       numbers and warnings; or refused, with what was wrong with which input.
 * </ol>
 *
 * <p>To add one: implement {@link limberboard.workings.sums.Sum} in a class of its own and enter it
 * in {@link limberboard.workings.sums.Sums}; {@code docs/workings.md} and the terminal list what is
 * entered. A page shows sums with its key {@code workings}: {@link
 * limberboard.workings.sums.ShownSum} puts a boat's own numbers in, and {@link
 * limberboard.workings.sums.SumUseCheck} says what is wrong with such keys.
 *
 * <pre>{@code
 * import java.util.Map;
 * import limberboard.library.value.KnownUnit;
 * import limberboard.workings.sums.*;
 *
 * Sum turns = Sums.ofTheTrade().sum("lashing-turns").orElseThrow();
 * var done = (Reckoning.Done) turns.reckon(Map.of("load", Value.of(3, KnownUnit.KILONEWTON)));
 * assert !done.answer().results().isEmpty() && !done.answer().working().isEmpty();
 * var refused = (Reckoning.Refused) turns.reckon(Map.of("load", Value.of(3, KnownUnit.LITRES)));
 * assert refused.reasons().size() == 1;
 * }</pre>
 *
 * <p><b>Choices made.</b> A sum never throws for what a person put in. What cannot be computed is
 * refused, what can be computed but lies where the formula is not known to hold is computed with a
 * warning. Within a sum, numbers are doubles in the unit that the input declares; every number that
 * leaves it is a JSR 385 quantity or stands in a text with its unit. Sources that could not be read
 * are marked <i>from memory</i>. See {@code docs/decisions/0009-workings.md}.
 *
 * <p><b>Threads.</b> Everything here is immutable and pure: no files, no clock.
 */
package limberboard.workings.sums;
