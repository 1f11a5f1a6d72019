/**
 * Fitting-out and laying-up lists: work put in the order in which a person walks the boat once.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>choose the {@link limberboard.upkeep.Task}s of a boat's season with {@link
 *       limberboard.upkeep.list.ListWork}, or bring your own;
 *   <li>give them with the boat and a {@link limberboard.upkeep.list.ListKind} to {@link
 *       limberboard.upkeep.list.WorkListMaker};
 *   <li>walk the {@link limberboard.upkeep.list.WorkList}: its parts, their lines, what is opened
 *       before and closed after each; and say its problems.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.upkeep.Upkeep;
 * import limberboard.upkeep.list.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * ListWork work = new ListWork(Upkeep.of(workspace.library(), dunlin));
 * var tasks = work.everything(ListKind.FITTING_OUT, 2026);
 * WorkList list = new WorkListMaker(dunlin).list(ListKind.FITTING_OUT, tasks);
 * var works = list.lines().map(line -> line.work().id()).toList();
 * assert !works.isEmpty() && works.stream().distinct().count() == works.size(); // each once
 * }</pre>
 *
 * <p><b>Choices made.</b> What comes before what is never broken, and each access is opened once a
 * part. Under these, access stands open for as few minutes of other work as can be, then the walk
 * over the zones, in the order of the model's page and beginning at the first, is as short as can
 * be, then the order of the library counts. {@code PartSearch} finds the best order and says
 * whether it is proven; on very tangled parts it settles for a good one. Where work must follow
 * work of a later part it moves there. Nothing written wrongly throws: it becomes a {@link
 * limberboard.library.problem.Problem}. See {@code docs/decisions/0012-lists.md}.
 *
 * <p><b>Threads.</b> Everything here is immutable and pure: no files, no clock.
 */
package limberboard.upkeep.list;
