/**
 * Sheets made of what was worked out: due, lists, shopping, rigging, a trace; as a page, and as CSV
 * where a table helps.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.print.page.CutPage;
 * import limberboard.print.sheet.*;
 * import limberboard.rigging.RunningRigging;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * RunningRigging rigging = RunningRigging.of(workspace.library(), dunlin);
 * CutPage sheet = new RiggingSheet(workspace.library()).of(rigging);
 * assert sheet.shortCautions().size() == rigging.cautions().size();
 * assert new RiggingCsv().render(rigging).lines().count() > rigging.ropes().size();
 * }</pre>
 *
 * <p><b>Choices made.</b> A sheet is a cut page like any other, and so comes out of every renderer
 * with its cautions.
 *
 * <p><b>Threads.</b> Everything public is immutable, but for {@link
 * limberboard.print.sheet.CsvTable}; any thread, best not the event thread.
 */
package limberboard.print.sheet;
