/**
 * Boats: one owner's boat with its equipment, use and log, and what fits it.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>read a {@link limberboard.boat.Workspace} with a {@link limberboard.boat.WorkspaceReader};
 *   <li>take a {@link limberboard.boat.Boat} from it and make a {@link limberboard.boat.Fitting}
 *       for a date;
 *   <li>ask it whether a {@link limberboard.library.value.Condition} holds, and why not; ask {@link
 *       limberboard.boat.WorkCautions} for the cautions of any work on that boat.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * var symptom = workspace.library().symptom("water-in-forward-cabin").orElseThrow();
 * Fit fit = dunlin.judge(symptom.head().fits());
 * assert fit.fits() && !fit.reason().isEmpty();
 * var cautions = WorkCautions.on(workspace.library(), dunlin).first(symptom.details());
 * assert !cautions.isEmpty(); // to be read before any check
 * }</pre>
 *
 * <p><b>Choices made.</b> A boat carries its model's page and its complete equipment (what the file
 * leaves out is what the yard fitted in that year), so nothing has to be looked up again. Reasons
 * are sentences for the owner, made where the decision is made, so that they cannot disagree.
 *
 * <p>The cautions of work are worked out here and nowhere else ({@link
 * limberboard.boat.WorkCautions}), so that no output knows fewer than another.
 *
 * <p><b>Writing.</b> {@link limberboard.boat.LogWriter} changes logs and {@link
 * limberboard.boat.BoatWriter} boats, each under a lock and from what the file holds at that
 * moment; all that was not to be changed stays to the letter, and what was written has been read
 * again. There is one grammar for reading and for writing: {@link limberboard.boat.LogDay}, {@link
 * limberboard.boat.LogHours}, {@link limberboard.boat.LogCount} and {@link
 * limberboard.boat.LogNote}, which forms and commands use too.
 *
 * <p><b>Threads.</b> All values are immutable. Readers belong to one thread at a time, writers to
 * any number.
 */
package limberboard.boat;
