/**
 * Workings: how much of each material a job needs on one boat, how many packs that is, and the sum
 * written out so that it can be checked with a pencil.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make {@link limberboard.workings.Workings} for a boat, or for no boat;
 *   <li>ask for what a {@link limberboard.library.page.MaterialUse} comes to: a {@link
 *       limberboard.workings.Needed};
 *   <li>look at its {@link limberboard.workings.AmountOutcome}: reckoned, to be measured on the
 *       boat, not stated, or a mistake in the page, each a type of its own;
 *   <li>for a shopping list over several jobs, add them up with {@link
 *       limberboard.workings.Totals}.
 * </ol>
 *
 * <p><b>Choices made.</b> Amounts are JSR 385 quantities. Whether dimensions agree is looked at
 * before anything is converted, and what does not agree is an outcome, never an exception: a page
 * with one wrong unit still prints. Nothing is converted from volume to weight, since no page says
 * how dense a material is. A quantity is written as its author wrote it; a computed one is written
 * to three figures.
 *
 * <p><b>Threads.</b> Everything here is immutable and pure: no files, no clock.
 */
package limberboard.workings;
