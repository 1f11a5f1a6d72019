/**
 * The season as a time line.
 *
 * <p>To use it: make the aspect; behind it is a {@link
 * limberboard.desktop.upkeep.timeline.TimeLineModel} without Swing, told whether somebody looks and
 * on what ground.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.desktop.upkeep.timeline.TimeLineModel;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.of("dunlin"));
 * session.replace(new WorkspaceReader(folders).read());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var model = new TimeLineModel(new UpkeepModel(session, background, folders), background);
 * assert model.drawn().isEmpty(); // nobody looks yet
 * model.want(true, false);
 * assert model.drawn().orElseThrow().picture().isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> Worked out in the background and drawn by {@code print.drawing}.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.upkeep.timeline;
