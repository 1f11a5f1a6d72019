/**
 * Quick notes in the window: one key from anywhere, kept at once, waiting in a list until they are
 * worked in or dropped.
 *
 * <p>To use it: make a {@link limberboard.desktop.workspace.notes.NotesModel}, let {@link
 * limberboard.desktop.workspace.notes.NoteDialog} ask for a note, and put a {@link
 * limberboard.desktop.workspace.notes.NotesView} into a place.
 *
 * <pre>{@code
 * import java.util.Optional;
 * import limberboard.desktop.workspace.notes.NoteTies;
 *
 * var ties = new NoteTies(Optional.of("rebed-deck-fitting"), Optional.of("dunlin"));
 * assert ties.page().isPresent() && NoteTies.NONE.boat().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> What was typed and not kept stands there again next time. A note that is
 * done stays to be found.
 *
 * <p><b>Threads.</b> The model belongs to the event thread; notes are read and written in the
 * background.
 */
package limberboard.desktop.workspace.notes;
