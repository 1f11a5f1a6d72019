/**
 * What a page cannot do on the boats there are, for whoever writes it: causes that no check tells
 * apart, checks that no plan asks for, mends dearer than the yard, and which estimates matter most.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>ask a {@link limberboard.trace.review.PageReview} for warnings, and, where minutes do not
 *       matter, for advice;
 *   <li>ask {@link limberboard.trace.review.Sensitivity} which estimates decide the next step, and
 *       so are worth measuring;
 *   <li>ask {@link limberboard.trace.review.PolicyComparison} how far the planner is from the best
 *       there is.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.review.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * var symptom = workspace.library().symptom("masthead-light-dead").orElseThrow();
 * PageReview review = PageReview.of(symptom, workspace, LocalDate.of(2026, 3, 15));
 * for (Remark remark : review.warnings()) {
 *   assert remark.pointer().startsWith("/causes/") : remark;
 * }
 * var comparison = PolicyComparison.of(review.faults().get(0), 100); // the planner kept short
 * assert comparison.atLeast() <= comparison.ours();
 * }</pre>
 *
 * <p><b>Choices made.</b> It judges pages; {@code limberboard.trace} traces faults on a boat. A
 * {@link limberboard.trace.review.Remark} names its place in the page by a JSON pointer, as
 * problems of headers do.
 *
 * <p><b>Threads.</b> Values are immutable. It may take minutes, and is run off the event thread.
 */
package limberboard.trace.review;
