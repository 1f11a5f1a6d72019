/**
 * What makes pages fit each other: references, orders, circles, links, cautions, figures within
 * their range. Each kind of page has a check of its own; {@link
 * limberboard.library.check.LibraryCheck} runs them all.
 *
 * <p><b>Choices made.</b> A check reads and reports, and changes nothing. What the library cannot
 * judge is a {@link limberboard.library.check.FurtherCheck} that a higher room gives it.
 */
package limberboard.library.check;
