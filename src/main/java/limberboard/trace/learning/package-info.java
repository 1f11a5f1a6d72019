/**
 * Whether recorded cases teach tracing anything: replaying cases that were held back, and invented
 * cases on which that can be tried.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>ask {@link limberboard.trace.learning.LearningReview} how far the chances moved toward the
 *       cases, and what held-back cases would have cost with and without learning;
 *   <li>for cases to try it on, ask {@link limberboard.trace.learning.CaseInventor}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.learning.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * var inventor = new CaseInventor(workspace.library(), 7, LocalDate.of(2026, 10, 31));
 * RecordedCase one = inventor.cases(3).get(2);
 * assert one.equals(new CaseInventor(workspace.library(), 7, LocalDate.of(2026, 10, 31))
 *     .cases(3).get(2));
 * }</pre>
 *
 * <p><b>Choices made.</b> Cases are invented from frequencies that nobody but {@link
 * limberboard.trace.learning.HiddenTruth} knows, so that learning can be seen to find them.
 *
 * <p><b>Threads.</b> Values are immutable; an inventor belongs to one thread. Reviews take a minute
 * or two, and are run off the event thread.
 */
package limberboard.trace.learning;
