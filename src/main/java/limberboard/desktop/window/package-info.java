/**
 * The window itself: the strip at the top, the places at the left, notices and what is being done.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.window.MainWindow} from a session, settings and the
 *       {@link limberboard.desktop.base.Place places};
 *   <li>show it;
 *   <li>go to a place with {@link limberboard.desktop.window.MainWindow#go}.
 * </ol>
 *
 * <p>The window itself needs a display. How small a screen it promises to fit does not:
 *
 * <pre>{@code
 * import limberboard.desktop.window.MainWindow;
 *
 * assert MainWindow.LEAST.width <= 1024 && MainWindow.LEAST.height <= 700; // fits a small screen
 * }</pre>
 *
 * <p><b>Choices made.</b> Keys: Ctrl+1 and on, or Alt and the marked letter, for the places; Ctrl+F
 * for the search field; F6 and Shift+F6 from region to region; Ctrl with plus, minus and zero for
 * the text size. A place that does not exist yet is not shown.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.window;
