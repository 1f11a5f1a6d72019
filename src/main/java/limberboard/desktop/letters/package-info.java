/**
 * The place where owners' letters are read and answered.
 *
 * <p>To use it: make a {@link limberboard.desktop.letters.LettersPlace} with what all places are
 * made with and with the ways in and out, and put it among the places.
 *
 * <p>How it is made: {@code InboxModel} has the rows, {@code LetterModel} the letter that is open;
 * both are without Swing. {@code Understanding} is a letter as it is understood: what was
 * recognised and what a person said otherwise; everything follows from that. {@code InboxPanel},
 * {@code LetterPanel}, {@code RecognisedPanel} and {@code DraftPanel} show them.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.letters.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var outlets =
 *     new LetterOutlets(
 *         () -> List.of(), // nobody opens a file
 *         () -> Optional.of("Subject: wet berth"), // what lies in the clipboard
 *         name -> Optional.of(Path.of(name)),
 *         text -> {},
 *         copied -> {});
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var outside =
 *     new LettersPlace.Outside(
 *         new WorkspaceFolders(Path.of("")),
 *         LetterNotes.NONE, // nothing is noted
 *         background,
 *         background,
 *         Guard.NONE,
 *         Clock.systemDefaultZone(),
 *         outlets);
 * assert outside.outlets().pasted().get().isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> Ten thousand letters are looked at in steps of a fifth of a second, heads
 * first, then the newest first, and all rows are equally high; so neither the list nor a chosen
 * letter waits. What is noted of a letter is written at once, in a file of its own beside it. See
 * {@code docs/decisions/0037-letters-place.md}.
 *
 * <p><b>Threads.</b> Models and panels belong to the event thread. {@code LetterReading} does what
 * takes time, on the thread of letters.
 */
package limberboard.desktop.letters;
