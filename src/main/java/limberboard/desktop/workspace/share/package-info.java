/**
 * Sharing in the window, on request only: pulling and pushing with progress, choosing between two
 * texts where both copies changed the same, and what came.
 *
 * <p>To use it: make a {@link limberboard.desktop.workspace.share.SharingModel} from a {@link
 * limberboard.desktop.workspace.share.ShareOutside}, and put a {@link
 * limberboard.desktop.workspace.share.SharingView} of it into a place.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.time.*;
 * import java.util.Optional;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.workspace.history.*;
 * import limberboard.desktop.workspace.share.*;
 * import limberboard.library.NewWorkspace;
 * import limberboard.sharing.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("alone"));
 * var notices = new Notices();
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * var direct = new Background(Runnable::run, Runnable::run, new Activity(), notices);
 * var who = new WhoRecords(new Memory(new Forgetful()));
 * var history =
 *     new HistoryOutside(
 *         () -> folders, session, direct, Guard.NONE, notices, who, ZoneOffset.UTC, Runnable::run, () -> {});
 * var model =
 *     new SharingModel(
 *         new ShareOutside(history, Connection::ofMachine, Asking.nobody(), Optional::empty));
 * model.look();
 * assert model.stage() == ShareStage.NO_HISTORY;
 * }</pre>
 *
 * <p><b>Choices made.</b> It goes through {@code limberboard.sharing} as the terminal does. A
 * choice counts only for the two texts that were looked at; when the other copy has changed again
 * meanwhile, it is asked anew. Names and passwords are asked for each time and kept nowhere. See
 * {@code docs/decisions/0052-keeping-in-the-window.md}.
 *
 * <p><b>Threads.</b> The model belongs to the event thread; pulling and pushing run in the
 * background, tell how far they are, and can be stopped.
 */
package limberboard.desktop.workspace.share;
