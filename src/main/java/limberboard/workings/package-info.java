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
 * <pre>{@code
 * import java.util.List;
 * import limberboard.library.page.Material.Pack;
 * import limberboard.library.value.Amount;
 * import limberboard.library.value.CountingUnit;
 * import limberboard.workings.*;
 *
 * var tube = new Pack("tube", (Amount.Fixed) Amount.of("80 ml"));
 * var cartridge = new Pack("cartridge", (Amount.Fixed) Amount.of("290 ml"));
 * var purchase =
 *     new PackChooser(List.of(tube, cartridge), CountingUnit.ML).choose(350).orElseThrow();
 * assert purchase.count() == 2 && purchase.leftOver() == 20;
 * assert new PackWords(QuantityWords.METRIC).of(purchase).contains("cartridge");
 * }</pre>
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
