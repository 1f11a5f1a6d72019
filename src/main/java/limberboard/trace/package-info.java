/**
 * Tracing: from a symptom to its cause by Bayes' rule, with the next step chosen by what it costs
 * on average until the fault is mended.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a symptom ready for a boat: {@link limberboard.trace.Fault#of};
 *   <li>{@link limberboard.trace.Trace#begin} a trace, and give it what was found with {@link
 *       limberboard.trace.Trace#answer}, {@link limberboard.trace.Trace#cantTell} and {@link
 *       limberboard.trace.Trace#mendTried};
 *   <li>ask it for its {@link limberboard.trace.Trace#ranking}, its {@link
 *       limberboard.trace.Trace#next} step and its {@link limberboard.trace.Trace#contradiction}.
 * </ol>
 *
 * <p>Beneath the pages lies a core that knows only numbers, {@link limberboard.effort}; {@link
 * limberboard.trace.Fault} turns pages into them. Where a trace can lead from where it stands is
 * told by {@link limberboard.trace.Trace#outcomes}, and drawn out as a whole by {@link
 * limberboard.trace.DiagnosticTree}.
 *
 * <p>Whoever writes a page asks {@link limberboard.trace.review.PageReview} what it cannot do on
 * the boats there are, and {@link limberboard.trace.review.Sensitivity} which of its estimates are
 * worth measuring.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * var symptom = workspace.library().symptom("clutch-slips").orElseThrow();
 * Trace trace = Trace.begin(Fault.of(symptom, dunlin, workspace.library(), workspace.cases()));
 * while (trace.next() instanceof NextStep.DoCheck step) {
 *   trace = trace.answer(step.check().id(), step.check().answers().get(0));
 * }
 * double all = trace.ranking().stream().mapToDouble(RankedCause::chance).sum();
 * assert Math.abs(all - 1) < 1e-9 && !trace.next().why().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> One fault at a time, with <i>something else</i> always on the list, so
 * that no list is ever taken as complete. Answers are independent of each other given the cause.
 * Chances are worked out anew from all answers each time, in the checks' order, so that changing
 * one answer cannot leave a trace of the former one. The exact rules, with their formulas and
 * sources, are in {@code docs/tracing.md}.
 *
 * <p><b>Threads.</b> Everything public is immutable and may be shared. There are no files and no
 * clock here: the date comes with the {@link limberboard.boat.Fitting}.
 */
package limberboard.trace;
