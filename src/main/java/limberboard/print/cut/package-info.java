/**
 * A page cut to one boat, or to none: {@link limberboard.print.cut.PageCutter} chooses by kind, and
 * a cutter for each kind does the work.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.Optional;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.print.cut.PageCutter;
 * import limberboard.print.page.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * var symptom = workspace.library().page("water-in-forward-cabin").orElseThrow();
 * CutPage cut = new PageCutter(workspace.library()).cut(symptom, Optional.of(dunlin));
 * assert cut.cutFor().contains("Dunlin");
 * assert cut.parts().get(0).role() == Part.Role.CAUTIONS && !cut.cautions().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> Cautions are collected before anything is cut away, and come first. What
 * a licensed person does is left out here, and so turns up in no output.
 *
 * <p><b>Threads.</b> A cutter is immutable and may be used from any thread; what grows while a page
 * is cut belongs to that one cut.
 */
package limberboard.print.cut;
