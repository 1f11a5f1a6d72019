/**
 * A plan for the time there is: which of the due work to do on a few free days, what stays undone,
 * and what that means.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>ask {@link limberboard.upkeep.plan.Planning} with a {@link
 *       limberboard.upkeep.plan.PlanOrder}, as a person writes it: it reads the free days, or
 *       proposes weekends, and says why there can be no plan;
 *   <li>walk the {@link limberboard.upkeep.plan.WorkPlan}: its days with their lines, what stays
 *       undone and why, and the proof of how good the choice is.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.*;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.upkeep.Upkeep;
 * import limberboard.upkeep.plan.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * LocalDate on = LocalDate.of(2026, 11, 28);
 * LocalDate until = LocalDate.of(2027, 4, 15);
 * Fitting whimbrel = new Fitting(workspace.boat("whimbrel").orElseThrow(), on);
 * var planning = new Planning(Upkeep.of(workspace.library(), whimbrel));
 * var order = new PlanOrder(OptionalInt.of(16 * 60), until, List.of(), false);
 * WorkPlan plan = ((PlanAnswer.Made) planning.answer(order)).plan();
 * for (var day : plan.days()) {
 *   assert day.minutes() <= day.free().minutes() : day.free();
 * }
 * assert plan.proof().danger() <= plan.proof().most();
 * }</pre>
 *
 * <p><b>Choices made.</b> Work is worth the danger it takes out, an estimate ({@link
 * limberboard.upkeep.plan.DangerScale}); what is for comfort only never takes the place of anything
 * else. What comes before what is never broken: work is chosen only with all due musts and all that
 * can sink her or hurt somebody that come before it, behind the rest where that is done, and work
 * with the mast down is done before work with the mast up. Each access is opened once a day. The
 * choice is searched in {@link limberboard.upkeep.plan.choice}, which proves how much better
 * another could be; the order within a day is that of the lists ({@link
 * limberboard.upkeep.list.OneGo}). Done by somebody else, work takes the owner's own minutes only,
 * and no day before those who do it can come. See {@code docs/decisions/0030-plan.md}.
 *
 * <p><b>Threads.</b> Everything here is immutable and pure: no files, no clock.
 */
package limberboard.upkeep.plan;
