/**
 * Sheets in the window: the list, the plan, the shopping and the rigging of a boat.
 *
 * <p>To use it: make the aspect of a sheet. Behind each is a {@link
 * limberboard.desktop.upkeep.sheets.SheetModel} without Swing, told whether somebody looks:
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.*;
 * import java.util.Optional;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.upkeep.sheets.ListModel;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var march = Clock.fixed(Instant.parse("2026-03-15T12:00:00Z"), ZoneOffset.UTC);
 * var session = new Session(march, Optional.of("dunlin"));
 * session.replace(new WorkspaceReader(folders).read());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var list = new ListModel(new UpkeepModel(session, background, folders), background);
 * assert list.lines().isEmpty(); // nobody looks yet
 * list.sheet().attend(true);
 * assert !list.lines().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> Worked out only while somebody looks at them.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; sheets are worked out by the
 * background.
 */
package limberboard.desktop.upkeep.sheets;
