/**
 * When pages were last read in full, and which have changed since.
 *
 * <pre>{@code
 * import limberboard.proofread.mark.*;
 *
 * String page = "---\ntitle: Knots\n---\nA bend joins two ropes.\n";
 * String read = page.replace("Knots\n", "Knots\nread: {on: 2026-05-01, by: a rigger}\n");
 * assert ReadMarks.digest(page).equals(ReadMarks.digest(read));
 * assert !ReadMarks.digest(page).equals(ReadMarks.digest(page.replace("two", "three")));
 * assert ReadingAge.USUAL.toString().equals("P2Y"); // how long a reading holds
 * }</pre>
 *
 * <p>{@link limberboard.proofread.mark.ReadMarks} says what has changed since it was read, {@link
 * limberboard.proofread.mark.ReadingAge} also what was read too long ago.
 *
 * <p><b>Choices made.</b> A digest of the text rather than the date of its file or of a version: it
 * stays right in copies, in archives and without a history, and tells a change of the same day.
 *
 * <p><b>Threads.</b> Stateless.
 */
package limberboard.proofread.mark;
