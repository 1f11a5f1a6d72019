/**
 * The place for upkeep: what is due on the chosen boat, when it comes, lists of it, a plan for the
 * time there is, what to get for it, her ropes, the sums of the trade, and her log.
 *
 * <p>To add an aspect (a list, a sheet, a table of the same boat and day):
 *
 * <ol>
 *   <li>write a model without Swing that takes an {@link
 *       limberboard.desktop.upkeep.state.UpkeepModel}, listens to it, and works out in a {@link
 *       limberboard.desktop.base.Latest} what is to be shown; test it without a display;
 *   <li>write one class that implements {@link limberboard.desktop.base.View} and draws that model;
 *       what it may use comes in {@link limberboard.desktop.upkeep.state.UpkeepTools};
 *   <li>add one line in {@link limberboard.desktop.upkeep.UpkeepPlace#make}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.upkeep.WorkNotes;
 * import limberboard.desktop.upkeep.state.UpkeepModel;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.of("dunlin"));
 * session.replace(new WorkspaceReader(folders).read());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var upkeep = new UpkeepModel(session, background, folders);
 * var notes = new WorkNotes(upkeep); // follows boat and day of the place, as every aspect does
 * for (var line : upkeep.lines()) {
 *   assert !notes.due(line.due().work().id()).isEmpty() : line.id();
 * }
 * }</pre>
 *
 * <p><b>Choices made.</b> Boat and day are those of the whole place, so that all aspects speak of
 * the same. What is due is worked out once, off the event thread, and handed to every aspect as one
 * immutable value; what was worked out before stays on the screen until the new one is there. Work
 * is marked done where it is listed: a small form, a line in the log, and the list follows. What is
 * written can be taken out again, to the letter. What is overdue is said in words and in its place
 * at the top; orange stays with cautions.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; what is due is worked out, and
 * the log written, by the backgrounds.
 */
package limberboard.desktop.upkeep;
