/**
 * Drawings: the tree of a fault and the time line of a season, laid out once and written as SVG.
 *
 * <p>To use it: give a {@link limberboard.trace.DiagnosticTree} to {@link
 * limberboard.print.drawing.TreeDrawing}, or a {@link limberboard.upkeep.TimeLine} to {@link
 * limberboard.print.drawing.TimeLineDrawing}, for one drawing of the whole; {@link
 * limberboard.print.drawing.TreeSheet} makes a page of the tree, with a drawing of its first forks,
 * and {@link limberboard.print.drawing.TreeText} indents it for a terminal.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.print.drawing.*;
 * import limberboard.upkeep.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * TimeLine line = TimeLine.of(Upkeep.of(workspace.library(), dunlin), 2);
 * String svg = TimeLineDrawing.whole(line);
 * assert svg.startsWith("<svg") && line.rows().size() > 0;
 * }</pre>
 *
 * <p><b>Choices made.</b> Laid out with the real widths of words, broken into lines as on screen;
 * the window shows the same time line.
 *
 * <p><b>Threads.</b> Any thread; each drawing is made on the thread that asks for it.
 */
package limberboard.print.drawing;
