/**
 * The history of a workspace that is, or lies in, a Git repository: who changed what and when on
 * each page, what stood there, and bringing it back.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>open the {@link limberboard.history.HistoryFolder} of a workspace, or let {@link
 *       limberboard.history.Beginning} make one;
 *   <li>ask {@link limberboard.history.PageHistory} for the versions of a page;
 *   <li>record what has changed with a {@link limberboard.history.Recorder}, as whatever saves a
 *       page does; bring a version back with a {@link limberboard.history.Restorer}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.util.List;
 * import limberboard.history.*;
 * import limberboard.library.NewWorkspace;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("yard"));
 * Path page = folders.articles().resolve("topics/knots.md");
 * Files.writeString(page, "---\ntitle: Knots\n---\nTie it.\n");
 * var author = new Author("Ada", "ada@example.org");
 * Beginning.begin(folders, author);
 * Files.writeString(page, "---\ntitle: Bends\n---\nTie it.\n");
 * try (var place = HistoryFolder.of(folders).orElseThrow()) {
 *   var recorder = new Recorder(place);
 *   recorder.record(recorder.unrecorded(), "Say bends", author);
 *   var history = new PageHistory(place);
 *   List<Version> versions = history.of(history.find("knots"));
 *   assert history.changes(versions, 0).equals(List.of("title: Knots → Bends"));
 *   new Restorer(place).restore(versions.get(1).path(), versions.get(1), author);
 *   assert Files.readString(page).contains("title: Knots");
 * }
 * }</pre>
 *
 * <p><b>Choices made.</b> The repository is an ordinary one, read and written with JGit and with
 * git alike; see {@code docs/decisions/0045-history.md}. Only what belongs to the workspace is
 * recorded. No credential is ever read or written here, and no program that a repository names is
 * run.
 *
 * <p><b>Threads.</b> A folder belongs to one thread at a time; two programs may record at once, and
 * one of them is then told to try again.
 */
package limberboard.history;
