/**
 * What is due, by urgency, and the form that marks it done.
 *
 * <p>To use it: make a {@link limberboard.desktop.upkeep.due.DueModel}, which knows no Swing, and a
 * {@link limberboard.desktop.upkeep.due.DueAspect} on it. Work is ticked there and marked done
 * together, in this list or in the one for fitting out.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.upkeep.due.DueModel;
 * import limberboard.desktop.upkeep.entry.*;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.of("dunlin"));
 * session.replace(new WorkspaceReader(folders).read());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var upkeep = new UpkeepModel(session, background, folders);
 * var log = new LogModel(session, LogStore.of(new LogWriter(folders)), background);
 * var model = new DueModel(upkeep, log);
 * String due = upkeep.lines().get(0).id();
 * model.tick(due);
 * model.markTicked(); // opens the form for all that is ticked; nothing is written yet
 * assert model.isTicked(due) && model.form().orElseThrow().doings().size() == 1;
 * }</pre>
 *
 * <p><b>Choices made.</b> What is half typed is kept for each boat.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; the log is written by the
 * background.
 */
package limberboard.desktop.upkeep.due;
