/**
 * Reading and writing files so that nothing is lost: {@link
 * limberboard.library.file.SharedTextFile} changes a file under a lock, {@link
 * limberboard.library.file.SafeFiles} writes, syncs and renames, {@link
 * limberboard.library.file.TextFile} reads within limits, {@link
 * limberboard.library.file.WorkspaceFolders} tells where things lie, and {@link
 * limberboard.library.file.LastNet} catches what nobody foresaw.
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0014-writing.md} for the lock and {@code
 * 0015-bounds.md} for the limits.
 */
package limberboard.library.file;
