/**
 * Ways of playing drills, to find out whether the marks are fair: one that follows the advice, one
 * that asks by chance or down the page, one that calls the yard at once.
 *
 * <p>To use it: have a {@link limberboard.drill.play.Player} play many drills on a fault with
 * {@link limberboard.drill.play.PlayedDrills#of}.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.drill.Counsel;
 * import limberboard.drill.mark.DrillMark;
 * import limberboard.drill.play.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.Fault;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * LocalDate day = LocalDate.of(2026, 3, 15);
 * Fitting turnstone = new Fitting(workspace.boat("turnstone").orElseThrow(), day);
 * var symptom = workspace.library().symptom("play-in-steering").orElseThrow();
 * Fault fault = Fault.of(symptom, turnstone, workspace.library(), workspace.cases());
 * var yard = PlayedDrills.of(fault, new Counsel(fault), new CallsTheYard(), 3);
 * assert yard.yardAtOnce() == 3 && yard.mean(DrillMark::regret) > 0;
 * }</pre>
 *
 * <p><b>Choices made.</b> The player that follows the advice asks a real trace, so that it shows
 * whether what the program proposes is what drills are marked by.
 *
 * <p><b>Threads.</b> Values are immutable; a player that remembers belongs to one thread.
 */
package limberboard.drill.play;
