/**
 * Pages on the screen: XHTML laid out by Flying Saucer in a column of readable width.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>render a page off the event thread with {@link limberboard.desktop.read.PageRenderer};
 *   <li>show the result in a {@link limberboard.desktop.read.ReadingPane};
 *   <li>say what a link does.
 * </ol>
 *
 * <p><b>Choices made.</b> Parsing and reading pictures happen off the event thread; only laying out
 * and painting stay on it. The user agent that Flying Saucer asks for resources knows none, so a
 * page can reach neither network nor files. SVG is painted as vectors, sharp at every scale.
 *
 * <p><b>Threads.</b> {@link limberboard.desktop.read.PageRenderer} may be used from any thread;
 * panes belong to the event thread.
 */
package limberboard.desktop.read;
