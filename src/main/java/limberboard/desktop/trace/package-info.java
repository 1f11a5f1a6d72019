/**
 * The place where a fault is traced: from the drawing of the boat to the mend.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.trace.TraceModel}, which holds everything and knows no
 *       Swing;
 *   <li>make a {@link limberboard.desktop.trace.TracePlace} on it and give it to the window;
 *   <li>start a symptom from elsewhere with {@link limberboard.desktop.trace.TraceModel#start}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.trace.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var session = new Session(Clock.systemDefaultZone(), Optional.of("dunlin"));
 * var notices = new Notices();
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), notices);
 * var kept = new KeptTraces(TraceStore.NONE, background, notices);
 * var model = new TraceModel(session, background, kept, notices, Guard.NONE);
 * session.replace(new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read());
 * model.start("water-in-forward-cabin");
 * assert model.stage() == Stage.CAUTIONS && !model.cautions().isEmpty();
 * model.cautionsRead();
 * assert model.step().isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> Cautions of the symptom stand alone on the screen before the first
 * question, until they are said to have been read; after that they stay as a band at the top. Each
 * boat has its own trace, so looking at another boat loses nothing. When the library is read anew
 * the answers are given again to the new page, and those that no longer exist are left out.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; chances and next steps are
 * computed by the background.
 */
package limberboard.desktop.trace;
