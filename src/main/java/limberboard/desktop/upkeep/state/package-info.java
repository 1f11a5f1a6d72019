/**
 * What all aspects of upkeep share: the boat, the day and what is due ({@link
 * limberboard.desktop.upkeep.state.UpkeepModel}), and what an aspect is.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var upkeep = new UpkeepModel(session, background, folders);
 * assert upkeep.state() == UpkeepModel.State.READING;
 * session.replace(new WorkspaceReader(folders).read());
 * session.choose(Optional.of("dunlin"));
 * upkeep.ask("1 May 2026");
 * assert upkeep.state() == UpkeepModel.State.READY && upkeep.day().getYear() == 2026;
 * assert upkeep.lines().size() == upkeep.upkeep().orElseThrow().all().size();
 * }</pre>
 *
 * <p><b>Choices made.</b> Boat and day are those of the whole place.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; what is due is worked out by the
 * background.
 */
package limberboard.desktop.upkeep.state;
