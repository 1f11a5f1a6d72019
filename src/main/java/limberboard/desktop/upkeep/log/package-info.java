/**
 * The log of a boat: its lines, the form for a new or a corrected one, and the mend that a trace
 * writes.
 *
 * <p>To use it: make a {@link limberboard.desktop.upkeep.log.LogListModel}, which knows no Swing,
 * and a {@link limberboard.desktop.upkeep.log.LogAspect} on it; show a {@link
 * limberboard.desktop.upkeep.log.MendedEntry} where a trace has ended.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.upkeep.entry.*;
 * import limberboard.desktop.upkeep.log.LogListModel;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.of("dunlin"));
 * session.replace(new WorkspaceReader(folders).read());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var log = new LogModel(session, LogStore.of(new LogWriter(folders)), background);
 * var model = new LogListModel(new UpkeepModel(session, background, folders), log);
 * assert model.rows().size() == session.boat().orElseThrow().log().size();
 * model.filter("launched");
 * assert model.rows().stream().allMatch(row -> row.toString().toLowerCase().contains("launched"));
 * }</pre>
 *
 * <p><b>Choices made.</b> Lines that cannot be read are shown with their reason and never dropped.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; the log is written by the
 * background.
 */
package limberboard.desktop.upkeep.log;
