/**
 * The window: starting it, and putting it together.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>call {@link limberboard.desktop.DesktopApp#open} with a workspace;
 *   <li>to see how it is started, read {@code DesktopStart} from top to bottom;
 *   <li>to see how it is put together, read {@code WindowAssembly}.
 * </ol>
 *
 * <p>Below this package: {@code look} (themes), {@code parts} (small components), {@code base}
 * (what places share), {@code drawing} (the boat with its zones), {@code read} (pages on screen),
 * {@code find} (the search field), {@code tree} (a strategy to walk), {@code window} (the frame),
 * and one package a place: {@code trace}, {@code pages}, {@code upkeep}, {@code letters}, {@code
 * boats}, {@code help}.
 *
 * <p>What is put together there, without the window itself:
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.pages.PagesModel;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var pages = new PagesModel(session, new Memory(new Forgetful())); // each place has a model
 * var upkeep = new UpkeepModel(session, background, folders);
 * session.replace(new WorkspaceReader(folders).read()); // again, whenever files have changed
 * session.choose(Optional.of("dunlin"));
 * assert upkeep.boat().equals(session.boat()) && pages.boat().equals(session.fitting());
 * }</pre>
 *
 * <p><b>Choices made.</b> Each place has a model without Swing, tested without a display, and
 * panels with one short method a region. Everything outside the window (files, index, clock,
 * executors) comes in through {@code WindowServices}, so tests and pictures put in their own. See
 * {@code docs/decisions/0005-window.md}.
 *
 * <p><b>Threads.</b> The window belongs to the event thread. Reading, searching, rendering and
 * writing run on the executors that {@code Workers} makes, and nowhere else.
 */
package limberboard.desktop;
