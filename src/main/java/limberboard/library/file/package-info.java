/**
 * Reading and writing files so that nothing is lost: {@link
 * limberboard.library.file.SharedTextFile} changes a file under a lock, {@link
 * limberboard.library.file.SafeFiles} writes, syncs and renames, {@link
 * limberboard.library.file.TextFile} reads within limits, {@link
 * limberboard.library.file.WorkspaceFolders} tells where things lie, and {@link
 * limberboard.library.file.LastNet} catches what nobody foresaw.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.util.Optional;
 * import limberboard.library.file.*;
 * import limberboard.library.problem.Problem;
 *
 * var folders = new WorkspaceFolders(Files.createTempDirectory("yard"));
 * Path file = folders.root().resolve("days.txt");
 * SafeFiles.write(file, "launched\n");
 * var adding =
 *     new SharedTextFile.Edit<Optional<Problem>>() {
 *       public SharedTextFile.Rewrite<Optional<Problem>> apply(Optional<String> now) {
 *         return SharedTextFile.Rewrite.write(
 *             now.map(text -> text + "mast up\n"), Optional.empty());
 *       }
 *
 *       public Optional<Problem> refused(Problem problem) {
 *         return Optional.of(problem);
 *       }
 *     };
 * assert new SharedTextFile(folders, file, 1_000).change(adding).isEmpty();
 * assert TextFile.read(folders, file, 1_000).text().equals("launched\nmast up\n");
 * assert TextFile.read(folders, file, 4).problems().size() == 1; // larger than allowed
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0014-writing.md} for the lock and {@code
 * 0015-bounds.md} for the limits. Reading and changing what a person keeps tells of problems; what
 * lies beneath, or writes what was asked for, throws an {@link java.io.IOException}.
 *
 * <p><b>Threads.</b> Any number of threads and programs may change a file at once; {@link
 * limberboard.library.file.FileMemory} belongs to one thread at a time.
 */
package limberboard.library.file;
