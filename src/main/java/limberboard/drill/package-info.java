/**
 * Drills: a hidden fault on a boat that a student finds step by step, without a boat.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>write a {@link limberboard.drill.DrillOrder} and make the {@link limberboard.drill.Drill}
 *       of it on a fault;
 *   <li>{@link limberboard.drill.DrillRun#begin} it and {@link limberboard.drill.DrillRun#take}
 *       {@link limberboard.drill.DrillStep}s until it has ended;
 *   <li>ask {@link limberboard.drill.Counsel} what would have been best, and {@code
 *       limberboard.drill.mark} for the marks.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.drill.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.Fault;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * LocalDate day = LocalDate.of(2026, 3, 15);
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), day);
 * var symptom = workspace.library().symptom("clutch-slips").orElseThrow();
 * Fault fault = Fault.of(symptom, dunlin, workspace.library(), workspace.cases());
 * Drill drill = Drill.of(new DrillOrder("clutch-slips", "dunlin", day, 7, 0), fault);
 * DrillRun run = DrillRun.begin(drill);
 * Counsel counsel = new Counsel(fault);
 * while (!run.ended()) {
 *   run = run.take(counsel.bestStep(run));
 * }
 * assert run.minutes() > 0 && run.minutes() == counsel.played(drill).minutes();
 * }</pre>
 *
 * <p><b>Choices made.</b> Everything hidden follows from the seed, each answer from the seed and
 * its check alone, so that the order of asking changes nothing and asking again says the same. An
 * order names no cause: who chooses one chooses a seed that draws it. What an owner tells unasked
 * is chosen without a look at the answer, so that telling it gives nothing away beyond the answer.
 * A drill has one fault. No real trace, log or case is read or written beyond the fault itself.
 *
 * <p><b>Threads.</b> Values are immutable and may be shared; {@code Counsel} belongs to one thread.
 */
package limberboard.drill;
