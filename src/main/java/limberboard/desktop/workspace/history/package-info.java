/**
 * The history of a page in the window: its versions, what each changed as rendered text, how the
 * page stood on a day, and bringing a version back.
 *
 * <p>To use it: make a {@link limberboard.desktop.workspace.history.HistoryModel} from a {@link
 * limberboard.desktop.workspace.history.HistoryOutside}, open a page in it, and put a {@link
 * limberboard.desktop.workspace.history.PageHistoryView} of it into a place.
 *
 * <pre>{@code
 * import java.util.Optional;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.workspace.history.WhoRecords;
 * import limberboard.history.Author;
 *
 * var who = new WhoRecords(new Memory(new Forgetful()));
 * assert who.of(Optional.empty()).isEmpty();
 * who.askedBy(proposed -> Author.read("Ada <ada@example.org>"));
 * assert who.of(Optional.empty()).orElseThrow().name().equals("Ada");
 * who.askedBy(proposed -> Optional.empty()); // asked once, and remembered
 * assert who.of(Optional.empty()).isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> What was taken out and added is told apart by words, by a line at its
 * side and by being struck; every sheet says first that it is to compare and not to work by. See
 * {@code docs/decisions/0052-keeping-in-the-window.md}.
 *
 * <p><b>Threads.</b> Models belong to the event thread; versions are read, compared and written in
 * the background.
 */
package limberboard.desktop.workspace.history;
