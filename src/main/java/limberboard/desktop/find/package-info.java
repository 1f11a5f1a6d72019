/**
 * The one search field over everything.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.find.SearchModel} and tell it when there is something to
 *       search ({@link limberboard.desktop.find.SearchModel#ready});
 *   <li>put a {@link limberboard.desktop.find.SearchField} on the model into the window;
 *   <li>say what happens when something is opened.
 * </ol>
 *
 * <p><b>Choices made.</b> Searching begins after a pause in typing and off the event thread;
 * outcomes of older searches are dropped. Enter before the outcome is there opens the first hit
 * once it is. The hits lie in the window's own layer above everything else, so that the field keeps
 * the focus.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.find;
