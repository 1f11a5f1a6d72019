/**
 * All findings of a workspace in one list: what reading it says, what a proofreader and the planner
 * say, what to write next, and what is to be read again; each with its line, and with the one step
 * that mends it where that is certain.
 *
 * <p>To use it: make a {@link limberboard.desktop.workspace.findings.FindingsModel} from a {@link
 * limberboard.desktop.workspace.findings.FindingsOutside}, and put a {@link
 * limberboard.desktop.workspace.findings.FindingsView} of it into a place.
 *
 * <pre>{@code
 * import java.nio.file.Files;
 * import java.time.Clock;
 * import java.util.Optional;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.workspace.findings.*;
 * import limberboard.library.NewWorkspace;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("tidy"));
 * Files.writeString(folders.articles().resolve("topics/knots.md"), "no header\n");
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * session.replace(new WorkspaceReader(folders).read());
 * var notices = new Notices();
 * var direct = new Background(Runnable::run, Runnable::run, new Activity(), notices);
 * var model =
 *     new FindingsModel(
 *         new FindingsOutside(folders, session, direct, direct, Guard.NONE, notices,
 *             new Memory(new Forgetful()), () -> {}));
 * model.look();
 * assert model.shown().size() == 1; // that nobody has read pages in full is listed by itself
 * model.kind(Optional.of(FindingKind.PLAN));
 * assert model.shown().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> Letters that no page covers stay in Letters, where they are recognised;
 * all else that {@code validate}, {@code proofread} and {@code next-pages} say is here. A repair is
 * asked for first. Rounds that take long come last, and each is shown as it is done.
 *
 * <p><b>Threads.</b> The model belongs to the event thread; plans are followed and files written in
 * the background.
 */
package limberboard.desktop.workspace.findings;
