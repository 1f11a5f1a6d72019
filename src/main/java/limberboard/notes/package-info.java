/**
 * Quick notes: thoughts and photos caught in passing, which wait in the workspace until they are
 * worked in or dropped, and are never lost.
 *
 * <p>To use it: add notes to a {@link limberboard.notes.NoteFolder}, ask it which wait, and end
 * them.
 *
 * <pre>{@code
 * import java.nio.file.Files;
 * import java.time.*;
 * import java.util.Optional;
 * import limberboard.library.NewWorkspace;
 * import limberboard.notes.*;
 *
 * var notes = new NoteFolder(NewWorkspace.in(Files.createTempDirectory("notes")));
 * var nine = LocalDateTime.of(2026, 5, 20, 9, 15);
 * var note = notes.add(nine, Optional.of("knots"), Optional.empty(), Optional.empty(), "Too short?");
 * assert notes.waiting().equals(java.util.List.of(note));
 * notes.end(note, LocalDate.of(2026, 5, 21), QuickNote.How.WORKED_IN);
 * assert notes.waiting().isEmpty() && notes.ended().size() == 1;
 * }</pre>
 *
 * <p><b>Choices made.</b> One file a note, in the form described in {@code docs/file-formats.md}.
 * They are of one desk, often an owner's own words, and are neither recorded in the history nor
 * shared. A note that ends is written among those that are done before it goes from those that
 * wait.
 *
 * <p><b>Threads.</b> Values are immutable; the folder is for any thread but the event thread.
 */
package limberboard.notes;
