/**
 * Where the text of a page is typed: with the numbers of its lines, its parts shown apart, its
 * problems marked, and what can stand at the caret in a list beside it.
 *
 * <p>To use it: make a {@link limberboard.desktop.write.text.PageEditor} for each open page, and a
 * {@link limberboard.desktop.write.text.CompletionList} on its text.
 *
 * <pre>{@code
 * import limberboard.desktop.write.text.CompletionList;
 *
 * var chosen = new CompletionList.Chosen(4, 6, "handy"); // takes the place of two letters
 * assert "skill: ha".length() - 7 == chosen.to() - chosen.from();
 * }</pre>
 *
 * <p><b>Choices made.</b> Each open page has an editor of its own, so undo, caret and what is in
 * sight stay as they were when one comes back to it. What the program puts in (a field of the form,
 * a link, another version) counts as typed, and undo takes it back. Only lines that have changed
 * are coloured anew.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.write.text;
