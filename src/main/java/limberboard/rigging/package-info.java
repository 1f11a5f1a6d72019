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
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.rigging.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * RunningRigging rigging = RunningRigging.of(workspace.library(), dunlin);
 * assert !rigging.totals().isEmpty() && !rigging.cautions().isEmpty();
 * for (Rope rope : rigging.ropes()) {
 *   assert rope.isReckoned() || !rope.open().isEmpty() : rope.title();
 * }
 * }</pre>
 *
 * <p><b>Choices made.</b> The rule is written down in {@code docs/rigging.md}: a length is factors
 * times dimensions plus what is added, rounded up to a step; a diameter is the thinnest stocked one
 * that carries the load and suits hand, clutch and sheave. What is missing or contradictory leaves
 * that one figure open, with a sentence for the owner; all other figures are reckoned.
 *
 * <p><b>Threads.</b> Everything is immutable and pure: no files, no clock.
 */
package limberboard.rigging;
