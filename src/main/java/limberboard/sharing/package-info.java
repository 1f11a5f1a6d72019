/**
 * Sharing a workspace with another copy through an ordinary Git remote, on request only: pulling
 * and merging page by page, sending, and a first copy.
 *
 * <p>To use it: make a {@link limberboard.sharing.Sharing} for a workspace's {@link
 * limberboard.history.HistoryFolder} and a {@link limberboard.sharing.Connection}; {@link
 * limberboard.sharing.Sharing#pull} says what came, or what is open; {@link
 * limberboard.sharing.Sending} sends.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.util.Optional;
 * import limberboard.history.*;
 * import limberboard.library.NewWorkspace;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.library.value.Own;
 * import limberboard.sharing.*;
 *
 * Path folder = Files.createTempDirectory("shared");
 * var yard = NewWorkspace.in(folder.resolve("yard"));
 * Path page = yard.articles().resolve("topics/knots.md");
 * Files.writeString(page, "---\ntitle: Knots\n---\nTie it.\n");
 * var ada = new Author("Ada", "ada@example.org");
 * Beginning.begin(yard, ada);
 * var connection = Connection.ofMachine(Asking.nobody(), HowFar.silent());
 * String remote = folder.resolve("remote.git").toString();
 * try (var place = HistoryFolder.of(yard).orElseThrow()) {
 *   new Sending(place, connection).push(ada, Optional.of(remote), true);
 * }
 * new Copying(connection).copy(remote, folder.resolve("dealer"), new CopyRole(Own.DEALER));
 * Files.writeString(page, "---\ntitle: Bends\n---\nTie it.\n");
 * try (var place = HistoryFolder.of(yard).orElseThrow()) {
 *   new Sending(place, connection).push(ada, Optional.empty(), false);
 * }
 * var dealer = new WorkspaceFolders(folder.resolve("dealer"));
 * try (var place = HistoryFolder.of(dealer).orElseThrow()) {
 *   var bob = new Author("Bob", "bob@example.org");
 *   var outcome = new Sharing(place, connection).pull(PullWish.by(bob));
 *   assert outcome instanceof PullOutcome.Pulled : outcome;
 * }
 * assert Files.readString(dealer.articles().resolve("topics/knots.md")).contains("Bends");
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0046-sharing.md}. The workspace's files are
 * changed only when nothing is open, and each is written whole; what is on the disk is recorded
 * first. A pull that was killed is gone on with when the workspace is opened next. Names and
 * passwords are asked for and kept nowhere; ssh is the machine's own.
 *
 * <p><b>Threads.</b> Everything runs on the thread that calls, which should not be the window's;
 * {@link limberboard.sharing.HowFar} is told how far it is and may stop it.
 */
package limberboard.sharing;
