/**
 * Rigging: every rope of a boat's running rigging, with its length, its diameter and the sums
 * behind them, from the rig's dimensions on the model's page.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.rigging.RunningRigging} for a boat on a day;
 *   <li>go through its {@link limberboard.rigging.Rope ropes}; each length is a {@link
 *       limberboard.rigging.RopeLength} and each diameter a {@link limberboard.rigging.Thickness},
 *       reckoned or open with what is missing;
 *   <li>take its {@link limberboard.rigging.RopeTotal totals} to the shop.
 * </ol>
 *
 * <p><b>Choices made.</b> The rule is written down in {@code docs/rigging.md}: a length is factors
 * times dimensions plus what is added, rounded up to a step; a diameter is the thinnest stocked one
 * that carries the load and suits hand, clutch and sheave. What is missing or contradictory leaves
 * that one figure open, with a sentence for the owner; all other figures are reckoned.
 *
 * <p><b>Threads.</b> Everything is immutable and pure: no files, no clock.
 */
package limberboard.rigging;
