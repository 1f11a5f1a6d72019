/**
 * Boats: one owner's boat with its equipment, use and log, and what fits it.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>read a {@link limberboard.boat.Workspace} with a {@link limberboard.boat.WorkspaceReader};
 *   <li>take a {@link limberboard.boat.Boat} from it and make a {@link limberboard.boat.Fitting}
 *       for a date;
 *   <li>ask it whether a {@link limberboard.library.Condition} holds, and why not; ask {@link
 *       limberboard.boat.WorkCautions} for the cautions of any work on that boat.
 * </ol>
 *
 * <p><b>Choices made.</b> A boat carries its model's page and its complete equipment (what the file
 * leaves out is what the yard fitted in that year), so nothing has to be looked up again. Reasons
 * are sentences for the owner, made where the decision is made, so that they cannot disagree.
 *
 * <p>The cautions of work are worked out here and nowhere else ({@link
 * limberboard.boat.WorkCautions}), so that no output knows fewer than another.
 *
 * <p><b>Threads.</b> All values are immutable. Readers and writers belong to one thread at a time.
 */
package limberboard.boat;
