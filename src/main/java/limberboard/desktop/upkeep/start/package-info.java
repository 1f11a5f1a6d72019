/**
 * The start of a bought boat in the window: a form that asks, by round and by kind of work, when it
 * was last done and how that is known, and writes it into her log in one step.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.upkeep.entry.*;
 * import limberboard.desktop.upkeep.start.StartModel;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.upkeep.start.Start;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.of("dunlin"));
 * session.replace(new WorkspaceReader(folders).read());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var upkeep = new UpkeepModel(session, background, folders);
 * var log = new LogModel(session, LogStore.of(new LogWriter(folders)), background);
 * var model = new StartModel(upkeep, log);
 * // dunlin came new from the yard, so there is nothing to begin
 * assert model.standing() == Start.Standing.NOTHING && model.halfTyped().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> A line is answered by a choice and a day; what nobody answers is not
 * known. Answers are kept for each boat until they are written, and the window asks before they are
 * lost. All is written as one change of the log, so that one step takes it back.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; the log is written by the
 * background.
 */
package limberboard.desktop.upkeep.start;
