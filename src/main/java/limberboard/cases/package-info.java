/**
 * What recorded cases teach: how common causes and answers are, how much a case of another boat
 * counts, and which earlier cases are like the one that is being traced.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>take the cases from a {@link limberboard.boat.Workspace};
 *   <li>ask {@link limberboard.cases.CountedCases} which of them count for a boat, and for the
 *       chances with them;
 *   <li>ask {@link limberboard.cases.SimilarCases} for earlier ones like it.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.Map;
 * import limberboard.boat.*;
 * import limberboard.cases.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 11, 1));
 * var symptom = workspace.library().symptom("water-in-forward-cabin").orElseThrow();
 * var similar = SimilarCases.of(
 *     symptom.id(), symptom.details(), dunlin, Map.of("taste", "salt"), workspace.cases());
 * assert !similar.isEmpty() && !similar.get(0).reason().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> All figures of how much a case counts stand in {@link
 * limberboard.cases.CaseWeights}. It knows pages and boats, and nothing of tracing.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.cases;
